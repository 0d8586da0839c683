package org.stoutwork.analysis.element;

import java.util.Map;
import java.util.TreeMap;

/**
 * A sum of unknowns, each times a factor: a displacement measured somewhere, or with the same
 * numbers the forces that a unit force there puts on the unknowns.
 *
 * @param terms factor by unknown, in the order of the unknowns
 */
public record LinearForm(Map<Integer, Double> terms) {
  /** Copies the terms, leaving out zeros. */
  public LinearForm {
    Map<Integer, Double> sorted = new TreeMap<>(terms);
    sorted.values().removeIf(v -> v == 0);
    terms = java.util.Collections.unmodifiableMap(sorted);
  }

  /** One unknown by itself. */
  public static LinearForm of(int unknown) {
    return new LinearForm(Map.of(unknown, 1.0));
  }

  /** This plus {@code factor} times the other. */
  public LinearForm plus(double factor, LinearForm other) {
    Map<Integer, Double> sum = new TreeMap<>(terms);
    other.terms.forEach((i, v) -> sum.merge(i, factor * v, Double::sum));
    return new LinearForm(sum);
  }

  /** Its value at a displacement of all unknowns. */
  public double at(double[] u) {
    double sum = 0;
    for (Map.Entry<Integer, Double> term : terms.entrySet()) {
      sum += term.getValue() * u[term.getKey()];
    }
    return sum;
  }

  /** Adds {@code factor} times this form to a vector over all unknowns. */
  public void addTo(double[] f, double factor) {
    terms.forEach((i, v) -> f[i] += factor * v);
  }

  /**
   * The displacement in global direction {@code direction} (0 to 5) of a point that a rigid arm
   * joins to a vertex.
   */
  public static LinearForm onArm(int vertex, org.stoutwork.analysis.model.Vec3 arm, int direction) {
    Map<Integer, Double> terms = new TreeMap<>();
    terms.put(6 * vertex + direction, 1.0);
    if (direction < 3) {
      double[] r = arm.toArray();
      int next = (direction + 1) % 3;
      int last = (direction + 2) % 3;
      // u = theta x r: component i is theta_(i+1) r_(i+2) - theta_(i+2) r_(i+1).
      terms.put(6 * vertex + 3 + next, r[last]);
      terms.put(6 * vertex + 3 + last, -r[next]);
    }
    return new LinearForm(terms);
  }
}
