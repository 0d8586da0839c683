package org.stoutwork.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PolynomialRootsTest {
  @Test
  void three_simple_roots_are_found_in_order() {
    // (x - 0.3)(x - 1.1)(x - 1.7)
    double[] c = {-0.561, 2.71, -3.1, 1};
    List<Double> roots = PolynomialRoots.signChanges(c, 0, 2);
    assertEquals(3, roots.size());
    assertEquals(0.3, roots.get(0), 1e-12);
    assertEquals(1.1, roots.get(1), 1e-12);
    assertEquals(1.7, roots.get(2), 1e-12);
  }

  @Test
  void roots_outside_the_interval_and_touching_ones_do_not_count() {
    assertTrue(PolynomialRoots.signChanges(new double[] {-3, 1}, 0, 2).isEmpty());
    assertTrue(PolynomialRoots.signChanges(new double[] {1, -2, 1}, 0, 2).isEmpty());
    assertTrue(PolynomialRoots.signChanges(new double[] {0, 0, 0}, 0, 2).isEmpty());
  }
}
