package org.stoutwork.analysis.element;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.linear.PolynomialRoots;

/**
 * A quantity along a member: one polynomial between each two neighbouring breaks, with or without a
 * jump at a break. Immutable.
 */
public final class Piecewise {
  private final double[] breaks;
  private final double[][] coefficients;
  private final double before;

  private Piecewise(double[] breaks, double[][] coefficients, double before) {
    this.breaks = breaks;
    this.coefficients = coefficients;
    this.before = before;
  }

  /**
   * A quantity given piece by piece.
   *
   * @param breaks ascending, from 0 to the length
   * @param coefficients of each piece, in ascending powers of the distance from its left break
   */
  static Piecewise of(double[] breaks, double[][] coefficients) {
    return new Piecewise(breaks, coefficients, coefficients[0][0]);
  }

  /**
   * The running integral that begins with {@code start} and jumps by {@code jumps} at the breaks.
   */
  Piecewise integral(double start, double[] jumps) {
    double[][] sum = new double[coefficients.length][];
    double value = start;
    for (int k = 0; k < coefficients.length; k++) {
      double[] c = coefficients[k];
      double[] integral = new double[c.length + 1];
      integral[0] = value + (jumps == null ? 0 : jumps[k]);
      for (int i = 0; i < c.length; i++) {
        integral[i + 1] = c[i] / (i + 1);
      }
      sum[k] = integral;
      value = PolynomialRoots.value(integral, breaks[k + 1] - breaks[k]);
    }
    return new Piecewise(breaks, sum, start);
  }

  /** {@code a} times this plus {@code b} times another with the same breaks. */
  Piecewise combine(double a, double b, Piecewise other) {
    double[][] sum = new double[coefficients.length][];
    for (int k = 0; k < sum.length; k++) {
      double[] c = coefficients[k];
      double[] d = other.coefficients[k];
      sum[k] = new double[Math.max(c.length, d.length)];
      for (int i = 0; i < sum[k].length; i++) {
        sum[k][i] = (i < c.length ? a * c[i] : 0) + (i < d.length ? b * d[i] : 0);
      }
    }
    return new Piecewise(breaks, sum, a * before + b * other.before);
  }

  Piecewise times(double a) {
    return combine(a, 0, this);
  }

  /** Length of the member. */
  public double length() {
    return breaks[breaks.length - 1];
  }

  /** Value at {@code x}; at a jump the value on its left, a load just at {@code x} not counted. */
  public double at(double x) {
    if (!(x >= -1e-9 * length() && x <= length() * (1 + 1e-9))) {
      throw new IllegalArgumentException(
          "the place " + x + " mm is outside the member, which runs from 0 to " + length() + " mm");
    }
    if (x <= 0) {
      return before;
    }
    int k = 0;
    // A place that equals a break up to rounding belongs to the piece on its left.
    while (k < coefficients.length - 1 && x > breaks[k + 1] + 1e-12 * length()) {
      k++;
    }
    return PolynomialRoots.value(coefficients[k], x - breaks[k]);
  }

  /** Value at the end, all loads but one just there counted. */
  double atEnd() {
    return at(length());
  }

  /** Smallest value anywhere, both sides of each jump counted, and its place. */
  public Extreme minimum() {
    return extreme(-1);
  }

  /** Largest value anywhere, both sides of each jump counted, and its place. */
  public Extreme maximum() {
    return extreme(1);
  }

  /** The extreme that is larger in size. */
  public Extreme largest() {
    Extreme low = minimum();
    Extreme high = maximum();
    return Math.abs(low.value()) > Math.abs(high.value()) ? low : high;
  }

  private Extreme extreme(int sign) {
    Extreme best = new Extreme(before, 0);
    for (int k = 0; k < coefficients.length; k++) {
      double length = breaks[k + 1] - breaks[k];
      List<Double> places = new ArrayList<>();
      places.add(0.0);
      places.addAll(
          PolynomialRoots.signChanges(PolynomialRoots.derivative(coefficients[k]), 0, length));
      places.add(length);
      for (double x : places) {
        double value = PolynomialRoots.value(coefficients[k], x);
        if (sign * value > sign * best.value()) {
          best = new Extreme(value, breaks[k] + x);
        }
      }
    }
    return best;
  }

  /** The breaks between the polynomial pieces, from 0 to the length. */
  public double[] breaks() {
    return breaks.clone();
  }
}
