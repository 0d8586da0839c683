package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;

class HigherAnalysesPropertiesTest {
  private static LoadCase heavy(double size) {
    return LoadCase.of(
        "heavy",
        Load.node("A2", 0.02 * size, 0, -size),
        Load.node("B2", 0, 0.01 * size, -size),
        Load.node("C2", 0, 0, -0.7 * size),
        Load.line("topD", 0, 0, -size / 1500));
  }

  @Property(tries = 12)
  void second_order_forces_balance_with_the_couples_of_the_moved_loads(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, r.nextBoolean());
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase loads = RandomFrames.loads(r, model, "all");
    SecondOrder.Answer answer = SecondOrder.solve(frame, Combination.of(loads), 4);
    if (answer instanceof SecondOrderResult result) {
      assertTrue(result.equilibriumError() < 1e-9, () -> "left " + result.equilibriumError());
    } else {
      assertTrue(((SecondOrder.NoAnswer) answer).message().contains("no second-order"));
    }
  }

  @Property(tries = 8)
  void small_loads_make_second_order_the_same_as_first(@ForAll long seed) {
    Random r = new Random(seed);
    PreparedFrame frame = FrameSolver.prepare(RandomFrames.frame(r)).prepared();
    LoadCase loads = heavy(1e-3);
    FrameResult first = frame.solve(loads).result();
    SecondOrderResult second = SecondOrder.solve(frame, loads).result();
    double[] u = first.displacement("B2");
    double[] v = second.displacement("B2");
    double[] f = first.member("topD").start();
    double[] g = second.start("topD");
    for (int i = 0; i < 6; i++) {
      double size = i < 3 ? first.displacement("A2")[2] : first.displacement("A2")[2] / 100;
      assertEquals(u[i], v[i], 1e-5 * Math.abs(size));
      assertEquals(f[i], g[i], 1e-5 * (i < 3 ? 1e-3 : 1));
    }
  }

  @Example
  void a_push_in_the_shape_of_the_mode_grows_as_the_buckling_factor_says() {
    PreparedFrame frame = FrameSolver.prepare(RandomFrames.frame(new Random(12))).prepared();
    LoadCase loads = heavy(1000);
    Mode mode = Modes.buckling(frame, Combination.of(loads), 1).get(0);
    double factor = mode.value();
    assertTrue(factor > 1, "the test wants a frame that stands, factor " + factor);
    // A push in the shape of the mode grows about as 1 / (1 - load / buckling load).
    assertEquals(1 / 0.9, growth(frame, loads, mode, 0.1 * factor), 0.01);
    assertEquals(1 / 0.7, growth(frame, loads, mode, 0.3 * factor), 0.03);
    assertEquals(1 / 0.5, growth(frame, loads, mode, 0.5 * factor), 0.08);
    assertInstanceOf(
        SecondOrder.NoAnswer.class,
        SecondOrder.solve(frame, Combination.named("over").plus(1.3 * factor, loads), 8));
  }

  private static double growth(PreparedFrame frame, LoadCase loads, Mode mode, double factor) {
    List<Load> push = new ArrayList<>();
    for (String node : List.of("A2", "B2", "C2", "D2", "A1", "B1", "C1", "D1")) {
      double[] m = mode.motion(node);
      push.add(Load.node(node, m[0], m[1], m[2]));
    }
    Combination plain = Combination.named("plain").plus(factor, loads);
    Combination pushed = plain.plus(10, new LoadCase("push", push));
    double first = 0;
    double second = 0;
    for (Load load : push) {
      String node = ((Load.OnNode) load).node();
      double[] a = frame.solve(pushed).result().displacement(node);
      double[] b = frame.solve(plain).result().displacement(node);
      double[] c = SecondOrder.solve(frame, pushed, 8).result().displacement(node);
      double[] d = SecondOrder.solve(frame, plain, 8).result().displacement(node);
      for (int i = 0; i < 3; i++) {
        first += mode.motion(node)[i] * (a[i] - b[i]);
        second += mode.motion(node)[i] * (c[i] - d[i]);
      }
    }
    return second / first;
  }

  @Property(tries = 6)
  void the_first_frequency_is_the_lowest_ratio_of_stiffness_to_mass(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<Mode> coarse = Modes.frequencies(frame, 3, true, 4);
    List<Mode> fine = Modes.frequencies(frame, 3, true, 8);
    for (int i = 0; i < 3; i++) {
      // A finer division can only lower a frequency found by an energy principle.
      assertTrue(fine.get(i).value() <= coarse.get(i).value() * (1 + 1e-9));
      assertEquals(1, fine.get(i).value() / coarse.get(i).value(), 0.03);
    }
    assertTrue(fine.get(0).value() <= fine.get(1).value());
  }

  @Example
  void threads_share_a_prepared_frame_and_get_the_very_same_numbers() throws Exception {
    FrameModel model = RandomFrames.frame(new Random(3), true);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<LoadCase> cases = new ArrayList<>();
    for (int k = 0; k < 40; k++) {
      cases.add(
          LoadCase.of(
              "k" + k, Load.point("topA", 25 * k, 0, k, -600), Load.node("C2", 0, 0, -300)));
    }
    List<double[]> alone = new ArrayList<>();
    cases.forEach(c -> alone.add(frame.solve(c).result().displacements()));
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Future<double[]>> together = new ArrayList<>();
      for (LoadCase c : cases) {
        together.add(pool.submit(() -> frame.solve(c).result().displacements()));
      }
      for (int k = 0; k < cases.size(); k++) {
        assertArrayEquals(alone.get(k), together.get(k).get());
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /**
   * A beam-column under an even load: w = q / (N k²) (sec (k L/2) - 1 - (k L)²/8) in the middle, k²
   * = N / EI (S. P. Timoshenko, J. M. Gere, <em>Theory of Elastic Stability</em>, article 1.5, from
   * memory).
   */
  @Test
  void a_pressed_beam_sags_between_its_nodes_as_the_closed_form_says() {
    double l = 1270;
    double ei = 10700 * 2.3e5;
    double n = 0.6 * Math.PI * Math.PI * ei / (l * l);
    double q = 0.31;
    FrameModel model =
        FrameModel.builder()
            .material("m", 10700, 650, 0)
            .section("s", new CrossSection(2600, 2.3e5, 7.1e5, 5e5, 0, 0))
            .node("a", 0, 0, 0)
            .node("b", l, 0, 0)
            .member("beam", "a", "b", "s", "m")
            .fixed("a", Direction.UX, Direction.UY, Direction.UZ, Direction.RX, Direction.RZ)
            .fixed("b", Direction.UY, Direction.UZ)
            .build();
    LoadCase loads = LoadCase.of("all", Load.node("b", -n, 0, 0), Load.line("beam", 0, 0, -q));
    SecondOrderResult result =
        SecondOrder.solve(FrameSolver.prepare(model).prepared(), loads).result();
    double k = Math.sqrt(n / ei);
    double half = k * l / 2;
    double sag = q / (n * k * k) * (1 / Math.cos(half) - 1 - half * half / 2);
    double[] middle = result.deflection("beam", result.stations() / 2);
    assertEquals(-sag, middle[2], 1e-5 * sag);
    assertEquals(0, middle[1], 1e-12);
    for (int i = 0; i < 6; i++) {
      assertEquals(result.displacement("a")[i], result.deflection("beam", 0)[i], 1e-12);
      double end = result.deflection("beam", result.stations())[i];
      assertEquals(result.displacement("b")[i], end, 1e-9);
    }
  }
}
