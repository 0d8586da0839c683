package org.stoutwork.linear;

import java.util.ArrayList;
import java.util.List;

/** Real roots of a polynomial within an interval, found between the roots of its derivative. */
public final class PolynomialRoots {
  private PolynomialRoots() {}

  /** Value of the polynomial with coefficients in ascending powers. */
  public static double value(double[] coefficients, double x) {
    double sum = 0;
    for (int k = coefficients.length - 1; k >= 0; k--) {
      sum = sum * x + coefficients[k];
    }
    return sum;
  }

  /** The derivative's coefficients. */
  public static double[] derivative(double[] coefficients) {
    if (coefficients.length <= 1) {
      return new double[] {0};
    }
    double[] slope = new double[coefficients.length - 1];
    for (int k = 1; k < coefficients.length; k++) {
      slope[k - 1] = k * coefficients[k];
    }
    return slope;
  }

  /**
   * Roots at which the polynomial changes sign inside ({@code low}, {@code high}), ascending. A
   * polynomial that vanishes everywhere has none.
   */
  public static List<Double> signChanges(double[] coefficients, double low, double high) {
    List<Double> roots = new ArrayList<>();
    if (coefficients.length < 2) {
      return roots;
    }
    List<Double> turns = signChanges(derivative(coefficients), low, high);
    double left = low;
    for (int k = 0; k <= turns.size(); k++) {
      double right = k < turns.size() ? turns.get(k) : high;
      double fl = value(coefficients, left);
      double fr = value(coefficients, right);
      // At a turn that just touches zero the sign stays as it is.
      if (fl * fr < 0) {
        roots.add(bisect(coefficients, left, right, fl));
      }
      left = right;
    }
    return roots;
  }

  private static double bisect(double[] coefficients, double low, double high, double valueAtLow) {
    double left = low;
    double right = high;
    for (int step = 0; step < 200; step++) {
      double middle = (left + right) / 2;
      if (middle <= left || middle >= right) {
        break;
      }
      double f = value(coefficients, middle);
      if (f == 0) {
        return middle;
      }
      if (f > 0 == valueAtLow > 0) {
        left = middle;
      } else {
        right = middle;
      }
    }
    return (left + right) / 2;
  }
}
