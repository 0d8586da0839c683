package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Restraint;

class BettiTest {
  /** Two springs k = 3 and 5 in a row: a symmetric matrix (8 -5; -5 5). */
  private static final Betti PROBE =
      new Betti(
          new double[] {2, -7},
          new double[] {(2 - 7) / 3.0, (2 - 7) / 3.0 - 7 / 5.0},
          new double[] {5});

  @Test
  void a_right_solution_passes() {
    double[] f = {11, 4};
    double[] u = {15 / 3.0, 15 / 3.0 + 4 / 5.0};
    assertEquals(0, PROBE.error(f, new double[1], u), 1e-15);
  }

  @Test
  void a_wrong_solution_shows_by_how_much_it_is_wrong() {
    double[] f = {11, 4};
    double[] u = {15 / 3.0, 15 / 3.0 + 4 / 5.0 + 0.01};
    double size = 11 * 5 / 3.0 + 4 * (5 / 3.0 + 7 / 5.0) + 2 * 5 + 7 * 5.81;
    assertEquals(7 * 0.01 / size, PROBE.error(f, new double[1], u), 1e-12);
  }

  @Test
  void the_work_of_reactions_on_settlements_counts() {
    // The ground moves by 0.6 and carries both nodes along; the probing reaction is 5.
    double[] moved = {0.6, 0.6};
    assertEquals(0, PROBE.error(new double[2], new double[] {0.6}, moved), 1e-15);
    assertTrue(PROBE.error(new double[2], new double[] {0}, moved) > 0.1);
  }

  @Property(tries = 40)
  void settled_feet_that_lift_on_ties_that_part_pass(@ForAll int seed) {
    double push = 100 + Math.abs(seed % 700);
    FrameModelBuilder b =
        FrameModel.builder()
            .material("m", 11000, 700, 480)
            .section("s", new CrossSection(3900, 1.2e6, 0.9e6, 1.6e6, 3100, 3100))
            .node("left", 0, 0, 0)
            .node("knee", 60, 20, 780)
            .node("far", 1180, 35, 770)
            .node("right", 1230, 0, 0)
            .node("cap", 500, 25, 830)
            .node("seat", 500, 25, 790)
            .member("post", "left", "knee", "s", "m")
            .member("rail a", "knee", "seat", "s", "m")
            .member("rail b", "seat", "far", "s", "m")
            .member("stud", "far", "right", "s", "m")
            .tie("bearing", "seat", "cap", Map.of(Direction.UZ, Link.contact(3e4)))
            .fixed("cap", Direction.UX, Direction.UY, Direction.RX, Direction.RY, Direction.RZ)
            .support("cap", Direction.UZ, Restraint.elastic(40))
            .support("left", Direction.UZ, Restraint.COMPRESSION_ONLY)
            .fixed("left", Direction.UX, Direction.UY, Direction.RX, Direction.RZ)
            .support("right", Direction.UZ, Restraint.prescribed(-1.7))
            .fixed("right", Direction.UX, Direction.UY, Direction.RX, Direction.RY, Direction.RZ);
    FrameResult result =
        FrameSolver.prepare(b.build())
            .prepared()
            .solve(
                LoadCase.of(
                    "lift", Load.node("knee", push, 13, seed % 400), Load.node("cap", 0, 0, -20)))
            .result();
    assertTrue(result.equilibriumError() < 1e-10, "unbalanced " + result.equilibriumError());
    assertTrue(result.reciprocityError() < 1e-10, "works differ " + result.reciprocityError());
  }
}
