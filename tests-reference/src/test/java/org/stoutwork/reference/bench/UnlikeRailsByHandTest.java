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
import org.stoutwork.analysis.solve.FrameSolver;

/** An end frame with unlike rails and joints against its closed form. */
class UnlikeRailsByHandTest {

  private static final double E = 11000;
  private static final double LEG = 90 * Math.pow(72, 3) / 12;
  private static final double LOWER = 38 * Math.pow(82, 3) / 12;
  private static final double UPPER = 42 * Math.pow(104, 3) / 12;
  private static final double K_LOWER = 17e6;
  private static final double K_UPPER = 29e6;
  private static final double A = 154;
  private static final double H = 741;
  private static final double L = 512;
  private static final double PUSH = 230;

  /**
   * Two legs pinned at the floor, rails at heights a and h whose ends turn against the legs with K.
   * Pushed sideways the frame bends antisymmetrically: an end of a rail resists turning with R =
   * 1/(L/(6 E I) + 1/K). Each leg carries P = H/2; the moments of the rails add up to P h; the leg
   * between the rails makes their turning agree. Derived from statics; stretch and shear left out.
   */
  private static double byHand() {
    double b = H - A;
    double p = PUSH / 2;
    double r1 = 1 / (L / (6 * E * LOWER) + 1 / K_LOWER);
    double r2 = 1 / (L / (6 * E * UPPER) + 1 / K_UPPER);
    double leg = E * LEG;
    double m2 = p * (b * b / (2 * leg) + H / r1) / (b / leg + 1 / r1 + 1 / r2);
    double m1 = p * H - m2;
    return (p * A * A * A / 3 - m2 * b * b / 2 + p * b * b * b / 3) / leg + m1 * H / r1;
  }

  @Test
  void an_end_frame_of_two_rails_sways_as_the_closed_form_says() {
    FrameModelBuilder frame =
        FrameModel.builder()
            .material("wood", E, 690, 0)
            .section("leg", section(LEG))
            .section("lower", section(LOWER))
            .section("upper", section(UPPER));
    for (String side : new String[] {"left", "right"}) {
      double x = side.equals("left") ? 0 : L;
      frame
          .node(side + " foot", x, 0, 0)
          .node(side + " knee", x, 0, A)
          .node(side + " head", x, 0, H);
      frame.member(side + " shin", side + " foot", side + " knee", "leg", "wood");
      frame.member(side + " thigh", side + " knee", side + " head", "leg", "wood");
      frame.fixed(
          side + " foot", Direction.UX, Direction.UY, Direction.UZ, Direction.RX, Direction.RZ);
      frame.fixed(side + " knee", Direction.UY, Direction.RX, Direction.RZ);
      frame.fixed(side + " head", Direction.UY, Direction.RX, Direction.RZ);
    }
    rail(frame, "lower", "knee", K_LOWER);
    rail(frame, "upper", "head", K_UPPER);
    LoadCase push = LoadCase.of("push", Load.node("left head", PUSH, 0, 0));
    double sway =
        FrameSolver.prepare(frame.build())
            .prepared()
            .solve(push)
            .result()
            .displacement("left head")[0];
    // The model's members hardly stretch: an area of 1e8 mm² leaves 1e-5 of the sway.
    assertEquals(byHand(), sway, 1e-4 * byHand());
  }

  private static CrossSection section(double i) {
    return new CrossSection(1e8, i, i, i, 0, 0);
  }

  private static void rail(FrameModelBuilder frame, String name, String at, double k) {
    MemberEnd end = MemberEnd.RIGID.spring(Direction.RY, k);
    frame.member(name, "left " + at, "right " + at, name, "wood", 0, end, end);
  }
}
