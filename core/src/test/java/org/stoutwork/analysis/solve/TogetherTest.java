package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

class TogetherTest {

  @Property(tries = 60)
  void results_added_up_answer_as_the_whole_combination_does(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase first = RandomFrames.loads(r, model, "first");
    LoadCase second = RandomFrames.loads(r, model, "second");
    Combination both = Combination.named("both").plus(1.35, first).plus(-0.7, second);
    List<FrameResult> held = frame.held(List.of(first, second));
    Map<FrameResult, Double> parts = new LinkedHashMap<>();
    parts.put(held.get(0), 1.35);
    parts.put(held.get(1), -0.7);
    Outcome whole = frame.solve(both);
    Outcome added = frame.together("both", parts);
    Statistics.label("stands").collect(whole instanceof FrameResult);
    if (whole instanceof FrameResult != added instanceof FrameResult) {
      FrameResult standing = (FrameResult) (whole instanceof FrameResult ? whole : added);
      double magnified =
          largest(standing.displacements())
              / largest(frame.heldTogether("both", parts).displacements());
      // So near to lifting that rounding decides.
      assertTrue(magnified > 1e3, "magnified by " + magnified);
      return;
    }
    if (whole instanceof FrameResult expected) {
      FrameResult result = (FrameResult) added;
      Statistics.label("lifts")
          .collect(expected.contacts().stream().anyMatch(state -> !state.touching()));
      assertSame(
          model, expected, result, agreement(frame, frame.heldTogether("both", parts), expected));
      assertTrue(result.residual() < 1e-9);
      assertTrue(result.equilibriumError() < 1e-9);
    }
  }

  /**
   * Both are refined to the same residual; a frame that is nearly loose magnifies what is left, and
   * so does one that hardly stands once its contacts have opened.
   */
  private static double agreement(PreparedFrame frame, FrameResult held, FrameResult opened) {
    double magnified = largest(opened.displacements()) / largest(held.displacements());
    return (1e-9 + 1e-12 * frame.conditionNumber()) * Math.max(1, magnified);
  }

  private static double largest(double[] values) {
    double most = 0;
    for (double v : values) {
      most = Math.max(most, Math.abs(v));
    }
    return most;
  }

  private static void assertSame(
      FrameModel model, FrameResult expected, FrameResult result, double agreement) {
    double[] a = expected.displacements();
    double[] b = result.displacements();
    double size = largest(a);
    assertArrayEquals(a, b, agreement * size);
    for (String member : model.members().keySet()) {
      double[] e = expected.member(member).end();
      double[] f = result.member(member).end();
      double largest = largest(e);
      assertArrayEquals(e, f, 1000 * agreement * (1 + largest));
      double middle = 0.37 * expected.member(member).length();
      assertArrayEquals(
          expected.member(member).internalAt(middle),
          result.member(member).internalAt(middle),
          1000 * agreement * (1 + largest));
    }
    for (int c = 0; c < expected.contacts().size(); c++) {
      assertEquals(expected.contacts().get(c).touching(), result.contacts().get(c).touching());
    }
  }

  @Property(tries = 30)
  void held_results_add_up_without_opening_anything(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    FrameResult first = frame.held(RandomFrames.loads(r, model, "first"));
    FrameResult second = frame.held(RandomFrames.loads(r, model, "second"));
    FrameResult sum = frame.heldTogether("sum", Map.of(first, -2.5, second, 0.8));
    double[] u = sum.displacements();
    double size = largest(u);
    for (int i = 0; i < u.length; i++) {
      assertEquals(
          -2.5 * first.displacements()[i] + 0.8 * second.displacements()[i],
          u[i],
          agreement(frame, sum, sum) * size);
    }
    assertTrue(sum.contacts().stream().allMatch(ContactState::touching));
  }
}
