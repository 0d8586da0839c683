package org.stoutwork.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.sketch.FixingSketch;

class BenchModelTest {

  @Test
  void the_weight_of_the_model_is_the_mass_of_the_parts() {
    Bench bench = Benches.complete(Benches.ordinary());
    Timbers timbers = Timbers.of(bench, Benches.TABLES);
    double kg =
        Masses.byPart(bench, timbers::get).values().stream().mapToDouble(Double::doubleValue).sum();
    for (JointLevel level : JointLevel.values()) {
      BenchModel model = BenchModel.of(bench, timbers::get, level, FloorContact.MAY_LIFT);
      FrameResult result =
          FrameSolver.prepare(model.frame())
              .prepared()
              .solve(LoadCase.of("weight", Load.selfWeight()))
              .result();
      double floor = model.feet().stream().mapToDouble(f -> result.reaction(f)[2]).sum();
      assertEquals(kg * 9.80665, floor, 1e-6 * floor);
      assertTrue(result.equilibriumError() < 1e-9);
    }
  }

  @Test
  void softer_joints_sway_more() {
    Bench bench = Benches.complete(Benches.ordinary());
    Timbers timbers = Timbers.of(bench, Benches.TABLES);
    double last = Double.POSITIVE_INFINITY;
    for (JointLevel level : JointLevel.values()) {
      BenchModel model = BenchModel.of(bench, timbers::get, level, FloorContact.MAY_LIFT);
      FrameResult result =
          FrameSolver.prepare(model.frame())
              .prepared()
              .solve(LoadCase.of("push", Load.selfWeight(), Load.node("top 1.1", 250, 0, 0)))
              .result();
      double sway = result.displacement("top 1.1")[0];
      assertTrue(sway < last);
      last = sway;
    }
  }

  /** Springs of the bearings on the left rail: all of them, then the place of the stiffest. */
  private static double[] springs(Direction way, Consumer<FixingSketch> words) {
    Bench bench =
        Benches.complete(
            Benches.ordinary().top(t -> t.fixing(f -> words.accept(f.screwDiameter(mm(6))))));
    Timbers timbers = Timbers.of(bench, Benches.TABLES);
    BenchModel model = BenchModel.of(bench, timbers::get, JointLevel.MEAN, FloorContact.MAY_LIFT);
    double sum = 0;
    double most = 0;
    double at = 0;
    for (String name : model.bearings()) {
      Member post = model.frame().members().get(name);
      if (name.startsWith("bearing of top on left ")
          && post.end().in(way) instanceof EndCondition.Elastic spring) {
        sum += spring.stiffness();
        if (spring.stiffness() > most) {
          most = spring.stiffness();
          at = model.frame().nodes().get(post.from()).y();
        }
      }
    }
    return new double[] {sum, at};
  }

  @Test
  void only_screws_without_play_hold_the_top_sideways() {
    Direction along = Direction.UZ;
    Direction across = Direction.UY;
    double all = springs(across, f -> f.holeDiameter(mm(6)))[0];
    assertTrue(all > 1000, all + " N/mm");
    assertEquals(all, springs(along, f -> f.holeDiameter(mm(6)))[0], 1e-9 * all);
    assertEquals(all / 3, springs(across, f -> f.slotLength(mm(14)))[0], 1e-9 * all);
    assertEquals(all, springs(along, f -> f.slotLength(mm(14)))[0], 1e-9 * all);
    assertEquals(all / 3, springs(along, f -> f.holeDiameter(mm(9)))[0], 1e-9 * all);
    assertEquals(
        all / 3,
        springs(across, f -> f.holeDiameter(mm(9)).heldAt(TopHeld.NOWHERE))[0],
        1e-9 * all);
  }

  @Test
  void the_screw_that_holds_does_so_where_it_stands() {
    // Rail from 94 mm to 531 mm: the middle screw at 312.5 mm, the foremost at 166.8 mm.
    double middle = springs(Direction.UY, f -> f.slotLength(mm(14)))[1];
    double front = springs(Direction.UY, f -> f.slotLength(mm(14)).heldAt(TopHeld.FRONT))[1];
    assertEquals(312.5, middle, 60);
    assertEquals(166.8, front, 60);
    assertTrue(front < middle - 50, front + " and " + middle);
  }
}
