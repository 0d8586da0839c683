package org.stoutwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.result.SelfCheck;

class ReciprocityTest {

  @Test
  void a_flexibility_that_is_not_symmetric_fails_the_self_check() {
    Tally tally = new Tally();
    Reciprocity.compare(new double[][] {{4, 1.7, 0.3}, {1.7, 2, 0.6}, {0.3, 0.6003, 5}}, tally);
    assertEquals(0.0003 / 0.6003, tally.selfCheck().reciprocityError(), 1e-12);
    assertFalse(tally.selfCheck().holds());
  }

  @Test
  void a_symmetric_flexibility_passes_it() {
    Tally tally = new Tally();
    Reciprocity.compare(new double[][] {{4, 1.7}, {1.7, 2}}, tally);
    assertEquals(0, tally.selfCheck().reciprocityError());
    assertTrue(tally.selfCheck().holds());
  }

  @Test
  void rounding_of_displacements_that_should_be_nought_is_not_an_error() {
    Tally tally = new Tally();
    Reciprocity.compare(new double[][] {{4, 1e-15}, {-1e-15, 2}}, tally);
    assertTrue(tally.selfCheck().holds());
  }

  @Test
  void unbalanced_forces_fail_the_self_check_too() {
    assertFalse(new SelfCheck(3, 2e-9, 0, 0).holds());
  }

  @Test
  void the_error_of_a_bench_comes_from_its_own_analyses() {
    Inquiry inquiry = new Inquiry(Benches.complete(Benches.ordinary()), Benches.TABLES);
    SelfCheck before = inquiry.selfCheck();
    assertTrue(before.reciprocityError() > 0, "displacements that agree to the last bit");
    assertTrue(before.holds(), before.toString());
    for (JointLevel level : JointLevel.values()) {
      Tally tally = new Tally();
      Reciprocity.check(inquiry.at(level), tally);
      assertTrue(tally.selfCheck().reciprocityError() <= before.reciprocityError());
      assertTrue(tally.selfCheck().reciprocityError() > 0, level.words());
    }
  }
}
