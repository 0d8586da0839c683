package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.stoutwork.analysis.element.LinearForm;

/**
 * Rigid conditions (each a {@link LinearForm} that must have a given value) solved exactly: one
 * unknown a condition is expressed by the others and drops out of the equations.
 *
 * <p>Conditions that say the same twice are kept once. Immutable after construction.
 */
final class Elimination {
  private static final double NOTHING = 1e-9;

  /** One solved condition: unknown {@code pivot} + sum of terms = sum of given values. */
  private record Row(int pivot, Map<Integer, Double> terms, Map<Integer, Double> given) {}

  private final Map<Integer, Row> rows = new TreeMap<>();
  private final List<Map<Integer, Double>> repeated = new ArrayList<>();
  private final int[] reducedIndex;
  private final int[] unknownOf;
  private final int[][] targets;
  private final double[][] factors;
  private final int conditions;

  /** Unknowns that others move. */
  private final int[] pivots;

  /** The given parts of all rows once more, laid out for quick reading: pivots, conditions. */
  private final int[] givenPivot;

  private final int[] givenCondition;
  private final double[] givenFactor;

  /**
   * Solves the conditions.
   *
   * @param unknowns number of unknowns
   * @param absent unknowns that no equation is wanted for
   * @param conditions forms that will be given values
   * @param reach characteristic length, mm, that makes rotations comparable with shifts
   */
  Elimination(int unknowns, boolean[] absent, List<LinearForm> conditions, double reach) {
    this.conditions = conditions.size();
    for (int c = 0; c < conditions.size(); c++) {
      if (conditions.get(c).terms().size() == 1) {
        take(conditions.get(c), c, absent, reach);
      }
    }
    for (int c = 0; c < conditions.size(); c++) {
      if (conditions.get(c).terms().size() != 1) {
        take(conditions.get(c), c, absent, reach);
      }
    }
    reducedIndex = new int[unknowns];
    int count = 0;
    for (int i = 0; i < unknowns; i++) {
      reducedIndex[i] = absent[i] || rows.containsKey(i) ? -1 : count++;
    }
    unknownOf = new int[count];
    targets = new int[unknowns][];
    factors = new double[unknowns][];
    for (int i = 0; i < unknowns; i++) {
      if (reducedIndex[i] >= 0) {
        unknownOf[reducedIndex[i]] = i;
        targets[i] = new int[] {reducedIndex[i]};
        factors[i] = new double[] {1};
      } else {
        expressed(i);
      }
    }
    pivots =
        rows.keySet().stream()
            .mapToInt(Integer::intValue)
            .filter(i -> targets[i].length > 0)
            .toArray();
    int parts = rows.values().stream().mapToInt(row -> row.given().size()).sum();
    givenPivot = new int[parts];
    givenCondition = new int[parts];
    givenFactor = new double[parts];
    layOut();
  }

  private void layOut() {
    int k = 0;
    for (Row row : rows.values()) {
      for (Map.Entry<Integer, Double> part : row.given().entrySet()) {
        givenPivot[k] = row.pivot();
        givenCondition[k] = part.getKey();
        givenFactor[k++] = part.getValue();
      }
    }
  }

  private void expressed(int i) {
    Row row = rows.get(i);
    int n = row == null ? 0 : row.terms().size();
    targets[i] = new int[n];
    factors[i] = new double[n];
    if (row != null) {
      int k = 0;
      for (Map.Entry<Integer, Double> term : row.terms().entrySet()) {
        targets[i][k] = reducedIndex[term.getKey()];
        factors[i][k++] = -term.getValue();
      }
    }
  }

  private void take(LinearForm form, int index, boolean[] absent, double reach) {
    Map<Integer, Double> terms = new TreeMap<>(form.terms());
    Map<Integer, Double> given = new TreeMap<>(Map.of(index, 1.0));
    double size = 0;
    for (Map.Entry<Integer, Double> term : form.terms().entrySet()) {
      size = Math.max(size, weight(term.getKey(), term.getValue(), reach));
      Row known = rows.get(term.getKey());
      if (known != null) {
        subtract(terms, given, known, term.getValue());
      }
    }
    int pivot = -1;
    double best = NOTHING * size;
    for (Map.Entry<Integer, Double> term : terms.entrySet()) {
      double weight = weight(term.getKey(), term.getValue(), reach);
      if (weight > best && !absent[term.getKey()]) {
        best = weight;
        pivot = term.getKey();
      }
    }
    if (pivot < 0) {
      repeated.add(given);
      return;
    }
    double p = terms.remove(pivot);
    terms.replaceAll((i, v) -> v / p);
    given.replaceAll((i, v) -> v / p);
    terms.keySet().removeIf(i -> absent[i]);
    Row row = new Row(pivot, terms, given);
    for (Row earlier : rows.values()) {
      Double factor = earlier.terms().get(pivot);
      if (factor != null) {
        subtract(earlier.terms(), earlier.given(), row, factor);
      }
    }
    rows.put(pivot, row);
  }

  private static double weight(int unknown, double factor, double reach) {
    return Math.abs(unknown % 6 < 3 ? factor : factor / reach);
  }

  private static void subtract(
      Map<Integer, Double> terms, Map<Integer, Double> given, Row row, double factor) {
    terms.remove(row.pivot());
    row.terms().forEach((i, v) -> terms.merge(i, -factor * v, Double::sum));
    row.given().forEach((i, v) -> given.merge(i, -factor * v, Double::sum));
  }

  /** Number of unknowns left. */
  int reducedSize() {
    return unknownOf.length;
  }

  /** The unknown that a reduced one stands for. */
  int unknownOf(int reduced) {
    return unknownOf[reduced];
  }

  /** The reduced unknowns that move unknown {@code i}. */
  int[] targets(int i) {
    return targets[i];
  }

  /** How much each of {@link #targets} moves it. */
  double[] factors(int i) {
    return factors[i];
  }

  /** All unknowns from the reduced ones and the given values of the conditions. */
  double[] expand(double[] reduced, double[] given) {
    double[] u = new double[targets.length];
    for (int r = 0; r < reduced.length; r++) {
      u[unknownOf[r]] = 0.0 + reduced[r];
    }
    for (int pivot : pivots) {
      int[] by = targets[pivot];
      double[] factor = factors[pivot];
      double sum = 0;
      for (int k = 0; k < by.length; k++) {
        sum += factor[k] * reduced[by[k]];
      }
      u[pivot] = sum;
    }
    for (int k = 0; k < givenPivot.length && given != null; k++) {
      u[givenPivot[k]] += givenFactor[k] * given[givenCondition[k]];
    }
    return u;
  }

  /** Forces on all unknowns gathered on the reduced ones. */
  double[] gather(double[] f) {
    double[] g = new double[unknownOf.length];
    for (int r = 0; r < g.length; r++) {
      g[r] = f[unknownOf[r]];
    }
    for (int pivot : pivots) {
      double force = f[pivot];
      int[] on = targets[pivot];
      double[] factor = factors[pivot];
      for (int k = 0; k < on.length; k++) {
        g[on[k]] += factor[k] * force;
      }
    }
    return g;
  }

  /** The force of each condition on the structure, from the forces that the unknowns lack. */
  double[] conditionForces(double[] lacking) {
    double[] force = new double[conditions];
    for (int k = 0; k < givenPivot.length; k++) {
      force[givenCondition[k]] -= givenFactor[k] * lacking[givenPivot[k]];
    }
    return force;
  }

  /** The largest contradiction among conditions that say the same twice. */
  double contradiction(double[] given) {
    double worst = 0;
    for (Map<Integer, Double> same : repeated) {
      double sum = 0;
      for (Map.Entry<Integer, Double> term : same.entrySet()) {
        sum += term.getValue() * given[term.getKey()];
      }
      worst = Math.max(worst, Math.abs(sum));
    }
    return worst;
  }
}
