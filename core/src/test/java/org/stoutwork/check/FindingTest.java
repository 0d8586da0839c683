package org.stoutwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;
import org.stoutwork.working.Pad;

class FindingTest {

  private static Finding finding() {
    return Finding.of("joint-of-a-test", "Joint of a test", Topic.JOINT).on("post", "shoulder");
  }

  @Test
  void a_force_that_nothing_carries_is_inadequate_and_can_be_printed() {
    CheckResult.Checked check = finding().judge(730, 0, Unit.N_MM, Pad.recording());
    assertEquals(Verdict.INADEQUATE, check.verdict());
    assertEquals(Utilisation.MOST, check.utilisation());
    assertEquals(Utilisation.NOTHING_CARRIES, check.note());
    assertTrue(Double.isFinite(check.demand().value()));
  }

  @Test
  void a_frame_that_folds_at_the_softest_is_marginal_with_a_note() {
    StiffnessRange range = new StiffnessRange(Double.POSITIVE_INFINITY, 0.62, 0.41);
    CheckResult.Checked check = finding().over(range).judge(6.2, 10, Unit.MM, Pad.recording());
    assertEquals(Verdict.MARGINAL, check.verdict());
    assertEquals(Utilisation.MOST, check.utilisation());
    assertEquals(Utilisation.LOOSE_AT_SOFTEST, check.note());
    assertEquals(0.62, check.working().result().orElseThrow(), 1e-12);
  }

  @Test
  void a_sum_without_limit_can_be_printed() {
    CheckResult.Checked check = finding().judgeSum(Double.MAX_VALUE, 0.8, Pad.recording());
    assertEquals(Verdict.INADEQUATE, check.verdict());
    assertTrue(check.demand().value() <= Utilisation.MOST, check.demand().toString());
    assertEquals(Utilisation.MOST, check.utilisation());
  }
}
