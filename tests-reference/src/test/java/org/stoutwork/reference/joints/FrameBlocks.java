package org.stoutwork.reference.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.Modes;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.analysis.solve.SecondOrder;
import org.stoutwork.check.service.SwayFormulas;

/**
 * Worked blocks of frames in closed form, built and solved as frames: members without shear
 * deformation, so large in area that their length hardly changes, held in the plane x-z.
 *
 * <p>Sways, joint moments and stiffnesses come from the solver. Figures that are steps of the
 * method by hand only are read off the solution by their meaning: the restraint R of a leg by its
 * rail is moment over turning of the leg there, α is R over EI/h, and the factor is the stiffness
 * over that of two legs that are clamped at both ends.
 */
final class FrameBlocks {

  private static final double E = 11_000;

  /** Area at which a change of length is below 1e-5 of the sway, mm². */
  private static final double STIFF = 1e8;

  private FrameBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.of(
        "portalOneRail", FrameBlocks::portal,
        "portalRigid", FrameBlocks::portal,
        "hFrameTwoRails", FrameBlocks::twoRails,
        "swaySecondOrder", FrameBlocks::leaning);
  }

  private static FrameModelBuilder begin(double legs) {
    return FrameModel.builder().material("wood", E, E / 16, 0).section("leg", section(legs));
  }

  private static CrossSection section(double bendingStiffness) {
    double i = bendingStiffness / E;
    return new CrossSection(STIFF, i, i, i, 0, 0);
  }

  private static MemberEnd joint(double stiffness) {
    return Double.isInfinite(stiffness)
        ? MemberEnd.RIGID
        : MemberEnd.RIGID.spring(Direction.RY, stiffness);
  }

  private static FrameModelBuilder inPlane(FrameModelBuilder model, String... nodes) {
    for (String node : nodes) {
      model.fixed(node, Direction.UY, Direction.RX, Direction.RZ);
    }
    return model;
  }

  /** A rail between two nodes with the same spring at both ends. */
  private static void rail(
      FrameModelBuilder model, String name, String nodes, double bending, double spring) {
    model
        .section(name, section(bending))
        .member(
            name, "left " + nodes, "right " + nodes, name, "wood", 0, joint(spring), joint(spring));
  }

  private static FrameResult pushed(FrameModel model, double force) {
    return (FrameResult)
        FrameSolver.prepare(model)
            .prepared()
            .solve(LoadCase.of("push", Load.node("left top", force, 0, 0)));
  }

  private static double moment(FrameResult result, String rail) {
    return Math.abs(result.member(rail).start()[4]);
  }

  private static double turning(FrameResult result, String node) {
    return Math.abs(result.displacement(node)[4]);
  }

  private static void portal(Worked w) {
    double h = w.in("h_mm");
    double legs = w.in("EIc_Nmm2");
    double foot = input(w, "K_base_Nmm");
    FrameModelBuilder model = begin(legs);
    for (String side : List.of("left", "right")) {
      double x = side.equals("left") ? 0 : w.in("L_mm");
      model.node(side + " foot", x, 0, 0).node(side + " top", x, 0, h);
      model.member(side + " leg", side + " foot", side + " top", "leg", "wood");
      inPlane(model, side + " foot", side + " top");
      model.fixed(side + " foot", Direction.UX, Direction.UZ);
      if (foot > 0) {
        model.support(
            side + " foot",
            Direction.RY,
            Double.isInfinite(foot) ? Restraint.FIXED : Restraint.elastic(foot));
      }
    }
    rail(model, "rail", "top", w.in("EIb_Nmm2"), input(w, "K_joint_Nmm"));
    FrameResult result = pushed(model.build(), w.in("H_N"));
    double sway = result.displacement("left top")[0];
    double k = SwayFormulas.STIFFNESS.value(w.in("H_N"), sway);
    double restraint = moment(result, "rail") / turning(result, "left top");
    w.putMillion("R_t", restraint)
        .put("alpha_t", restraint / (legs / h))
        .put("factor", k / (2 * 12 * legs / (h * h * h)))
        .put("k", k)
        .put("delta", sway)
        .putMillion("M_joint", moment(result, "rail"));
  }

  private static void twoRails(Worked w) {
    double h = w.in("h_mm");
    FrameModelBuilder model = begin(w.in("EIc_Nmm2"));
    for (String side : List.of("left", "right")) {
      double x = side.equals("left") ? 0 : w.in("L_mm");
      model
          .node(side + " foot", x, 0, 0)
          .node(side + " low", x, 0, w.in("a_mm"))
          .node(side + " top", x, 0, h)
          .member(side + " below", side + " foot", side + " low", "leg", "wood")
          .member(side + " above", side + " low", side + " top", "leg", "wood");
      inPlane(model, side + " foot", side + " low", side + " top");
      model.fixed(side + " foot", Direction.UX, Direction.UZ);
    }
    rail(model, "rail 1", "low", w.in("EIb1_Nmm2"), input(w, "K1_Nmm"));
    rail(model, "rail 2", "top", w.in("EIb2_Nmm2"), input(w, "K2_Nmm"));
    FrameResult result = pushed(model.build(), w.in("H_N"));
    double sway = result.displacement("left top")[0];
    w.putMillion("R_1", moment(result, "rail 1") / turning(result, "left low"))
        .putMillion("R_2", moment(result, "rail 2") / turning(result, "left top"))
        .putMillion("M_joint_low", moment(result, "rail 1"))
        .putMillion("M_joint_top", moment(result, "rail 2"))
        .put("delta", sway)
        .put("k", SwayFormulas.STIFFNESS.value(w.in("H_N"), sway));
  }

  private static double input(Worked w, String name) {
    return w.inputs().get(name).equals("inf") ? Double.POSITIVE_INFINITY : w.in(name);
  }

  /** A stiff post that leans on a spring: the frame of the check, reduced to its one movement. */
  private static void leaning(Worked w) {
    double h = w.in("h_mm");
    double k = w.in("k_N_mm");
    double push = w.in("H_N");
    double weight = w.in("W_N");
    FrameModelBuilder model =
        begin(1e12)
            .node("foot", 0, 0, 0)
            .node("top", 0, 0, h)
            .member("post", "foot", "top", "leg", "wood")
            .support("top", Direction.UX, Restraint.elastic(k));
    inPlane(model, "foot", "top").fixed("foot", Direction.UX, Direction.UZ);
    PreparedFrame frame = FrameSolver.prepare(model.build()).prepared();
    LoadCase loads = LoadCase.of("push and weight", Load.node("top", push, 0, -weight));
    double sway = SwayFormulas.AMPLIFIED.value(push, k, weight, h);
    double solved = SecondOrder.solve(frame, loads).result().displacement("top")[0];
    assertEquals(solved, sway, 1e-6 * solved, "formula of the check and second-order analysis");
    w.put("alpha_cr", Modes.buckling(frame, Combination.of(loads), 1).get(0).value())
        .put("amplifier", sway / (push / k))
        .put("delta", sway);
  }
}
