package org.stoutwork.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.bench.Bench;

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
}
