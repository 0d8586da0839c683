package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Restraint;

class FrictionTest {
  private static PreparedFrame bench() {
    Map<Direction, Restraint> foot =
        Map.of(
            Direction.UX, Restraint.FIXED,
            Direction.UY, Restraint.FIXED,
            Direction.UZ, Restraint.COMPRESSION_ONLY);
    Map<String, Map<Direction, Restraint>> supports = new LinkedHashMap<>();
    for (String node : new String[] {"A0", "B0", "C0", "D0"}) {
      supports.put(node, foot);
    }
    FrameModel model = RandomFrames.frame(new Random(5)).withSupports(supports);
    return FrameSolver.prepare(model).prepared();
  }

  private static Map<String, Double> everywhere(double mu) {
    Map<String, Double> coefficients = new LinkedHashMap<>();
    for (String node : new String[] {"A0", "B0", "C0", "D0"}) {
      coefficients.put(node, mu);
    }
    return coefficients;
  }

  private static Combination loads(double push) {
    return Combination.of(
        LoadCase.of(
            "push",
            Load.line("topA", 0, 0, -0.6),
            Load.line("topC", 0, 0, -0.4),
            Load.node("A2", push, 0.2 * push, 0)));
  }

  @Test
  void on_rough_ground_nothing_slides_and_nothing_changes() {
    PreparedFrame bench = bench();
    Friction.Held held =
        assertInstanceOf(Friction.Held.class, Friction.solve(bench, everywhere(100), loads(60)));
    assertTrue(held.pushes().isEmpty());
    double[] u = bench.solve(loads(60)).result().displacement("C2");
    for (int i = 0; i < 6; i++) {
      assertEquals(u[i], held.result().displacement("C2")[i], 1e-12);
    }
  }

  @Test
  void a_foot_that_spreads_too_hard_slides_with_just_its_friction() {
    PreparedFrame bench = bench();
    int sliding = 0;
    for (double mu = 0.4; mu > 0.04; mu *= 0.8) {
      if (Friction.solve(bench, everywhere(mu), loads(30)) instanceof Friction.Held held) {
        double sumX = 30;
        double sumY = 6;
        for (String node : everywhere(mu).keySet()) {
          double[] r = held.reaction(node);
          sumX += r[0];
          sumY += r[1];
          double limit = mu * r[2];
          assertTrue(Math.hypot(r[0], r[1]) <= limit * (1 + 1e-6) + 1e-6, node + " at " + mu);
          if (held.pushes().containsKey(node)) {
            sliding++;
            double[] u = held.result().displacement(node);
            assertEquals(limit, Math.hypot(r[0], r[1]), 1e-6 * (1 + limit));
            assertTrue(u[0] * r[0] + u[1] * r[1] <= 1e-9, "friction acts against the slip");
          }
        }
        assertEquals(0, sumX, 1e-6);
        assertEquals(0, sumY, 1e-6);
      }
    }
    assertTrue(sliding > 0, "the test wants feet that slide while the bench stands");
  }

  @Test
  void a_push_stronger_than_all_friction_makes_the_bench_slide() {
    // The ground presses 0.6 N/mm and 0.4 N/mm over about 1.5 m: 1.5 kN, of which a third is 500 N.
    assertInstanceOf(Friction.Slides.class, Friction.solve(bench(), everywhere(0.3), loads(900)));
  }

  @Test
  void friction_where_nothing_holds_sideways_is_refused() {
    PreparedFrame frame = FrameSolver.prepare(RandomFrames.frame(new Random(5))).prepared();
    assertThrows(
        IllegalArgumentException.class, () -> Friction.solve(frame, Map.of("A2", 0.3), loads(10)));
  }
}
