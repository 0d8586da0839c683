package org.stoutwork.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ComplementarityTest {
  private static double[][] gram(Random random, int n, int rank) {
    double[][] v = new double[rank][];
    for (int k = 0; k < rank; k++) {
      v[k] = RandomMatrices.vector(random, n);
    }
    double[][] m = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        for (int k = 0; k < rank; k++) {
          m[i][j] += v[k][i] * v[k][j];
        }
      }
    }
    return m;
  }

  @Property(tries = 300)
  void the_state_found_is_the_only_admissible_of_all_states(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 7) int n) {
    Random random = new Random(seed);
    double[][] m = gram(random, n, n + 2);
    double[] q = RandomMatrices.vector(random, n);
    Complementarity.Settled found =
        assertInstanceOf(Complementarity.Settled.class, Complementarity.solve(m, q));
    int admissible = 0;
    for (int state = 0; state < 1 << n; state++) {
      if (isAdmissible(m, q, state)) {
        admissible++;
        for (int i = 0; i < n; i++) {
          assertEquals((state >> i & 1) == 1, found.open()[i]);
        }
      }
    }
    assertEquals(1, admissible);
  }

  private static boolean isAdmissible(double[][] m, double[] q, int state) {
    int n = q.length;
    int[] open =
        java.util.stream.IntStream.range(0, n).filter(i -> (state >> i & 1) == 1).toArray();
    double[][] part = new double[open.length][open.length];
    double[] pull = new double[open.length];
    for (int a = 0; a < open.length; a++) {
      pull[a] = -q[open[a]];
      for (int b = 0; b < open.length; b++) {
        part[a][b] = m[open[a]][open[b]];
      }
    }
    double[] z = SmallDense.solveSymmetric(part, pull);
    boolean ok = true;
    double[] r = q.clone();
    for (int a = 0; a < open.length; a++) {
      ok &= z[a] > 0;
      for (int i = 0; i < n; i++) {
        r[i] += m[i][open[a]] * z[a];
      }
    }
    for (int i = 0; i < n; i++) {
      ok &= (state >> i & 1) == 1 || r[i] >= 0;
    }
    return ok;
  }

  @Test
  void lifting_without_resistance_ends_in_a_ray() {
    // A rigid table on two feet, pulled up: the sum of openings costs nothing.
    double[][] m = {{1, -1}, {-1, 1}};
    Complementarity.Ray ray =
        assertInstanceOf(Complementarity.Ray.class, Complementarity.solve(m, new double[] {-3, 1}));
    assertTrue(ray.direction()[0] > 0);
    assertEquals(ray.direction()[0], ray.direction()[1], 1e-9);
  }

  @Test
  void pressing_feet_all_stay_closed() {
    double[][] m = {{2, -1}, {-1, 2}};
    Complementarity.Settled found =
        (Complementarity.Settled) Complementarity.solve(m, new double[] {5, 0});
    assertArrayEquals(new boolean[] {false, false}, found.open());
  }

  @Test
  void a_search_that_takes_too_long_is_given_up_and_says_so() {
    double[][] m = {{4, 1, 0.5}, {1, 3, 0.2}, {0.5, 0.2, 2}};
    double[] q = {-1, -2, -3};
    assertEquals(new Complementarity.Unfinished(2), Complementarity.solve(m, q, 2));
    assertInstanceOf(Complementarity.Settled.class, Complementarity.solve(m, q));
  }
}
