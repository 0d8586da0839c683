package org.stoutwork.reference.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;

/**
 * Sway of an end frame with sprung rail joints against its closed form (slope deflection of two
 * equal legs under antisymmetric sway, derived; the figures to five digits were worked out apart
 * from the product). Legs E I = 2.2008e10 N·mm², rails E I = 7.128e10 N·mm², height 800 mm, rails
 * 500 mm, joints 20 kN·m/rad, pinned feet, 500 N at the top.
 */
class RackingByHandTest {

  private static final double E = 10_000;
  private static final double LEG = 2.2008e10;
  private static final double RAIL = 7.128e10;
  private static final double HEIGHT = 800;
  private static final double WIDTH = 500;
  private static final double JOINT = 2e7;
  private static final double PUSH = 500;

  /** The closed form leaves out axial forces: areas so large that these do no more than 1e-5. */
  private static final double AREA = 1e7;

  private static final double CLOSE = 3e-5;

  private static final MemberEnd SPRUNG = MemberEnd.RIGID.spring(Direction.RY, JOINT);

  private final FrameModelBuilder model = FrameModel.builder();

  private void begin() {
    model.material("wood", E, 700, 0);
    section("leg", LEG);
    section("rail", RAIL);
  }

  private void section(String name, double ei) {
    // Without shear areas a member bends only, as the closed form has it.
    model.section(name, new CrossSection(AREA, ei / E, ei / E, ei / E, 0, 0));
  }

  private void node(String name, double x, double z) {
    model.node(name, x, 0, z);
    model.fixed(name, Direction.UY, Direction.RX, Direction.RZ);
  }

  private void feet() {
    node("front foot", 0, 0);
    node("back foot", WIDTH, 0);
    model.fixed("front foot", Direction.UX, Direction.UZ);
    model.fixed("back foot", Direction.UX, Direction.UZ);
  }

  private void leg(String name, String from, String to) {
    model.member(name, from, to, "leg", "wood", 0, MemberEnd.RIGID, MemberEnd.RIGID);
  }

  private void rail(String name, String from, String to) {
    model.member(name, from, to, "rail", "wood", 0, SPRUNG, SPRUNG);
  }

  private FrameResult pushed() {
    return FrameSolver.prepare(model.build())
        .prepared()
        .solve(
            LoadCase.of(
                "push",
                Load.node("front head", PUSH / 2, 0, 0),
                Load.node("back head", PUSH / 2, 0, 0)))
        .result();
  }

  @Test
  void an_end_frame_with_one_rail_sways_as_by_hand() {
    begin();
    feet();
    node("front head", 0, HEIGHT);
    node("back head", WIDTH, HEIGHT);
    leg("front leg", "front foot", "front head");
    leg("back leg", "back foot", "back head");
    rail("top rail", "front head", "back head");
    FrameResult result = pushed();
    double sway = result.displacement("front head")[0];
    // H h³/(6 E I_c) + H h² L/(12 E I_b) + H h²/(2 K) = 1.9387 + 0.1871 + 8.0000 mm
    double byHand =
        PUSH * Math.pow(HEIGHT, 3) / (6 * LEG)
            + PUSH * HEIGHT * HEIGHT * WIDTH / (12 * RAIL)
            + PUSH * HEIGHT * HEIGHT / (2 * JOINT);
    assertEquals(10.126, byHand, 5e-4);
    assertEquals(byHand, sway, CLOSE * byHand);
    assertEquals(49.379, PUSH / sway, 49.379 * CLOSE + 5e-4);
    // Each joint carries H h/2 = 200 N·m.
    assertEquals(200_000, Math.abs(result.member("top rail").start()[4]), 200_000 * CLOSE);
  }
}
