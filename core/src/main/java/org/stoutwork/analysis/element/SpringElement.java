package org.stoutwork.analysis.element;

import java.util.Map;

/** A linear spring that resists one {@link LinearForm} of displacements. */
public final class SpringElement implements Element {
  private final String part;
  private final LinearForm stretch;
  private final double constant;
  private final int[] unknowns;
  private final double[] factor;
  private final double[] stiffness;

  /**
   * Makes the spring.
   *
   * @param part what messages call it
   * @param stretch the displacement it resists
   * @param constant N/mm or N mm/rad
   */
  public SpringElement(String part, LinearForm stretch, double constant) {
    this.part = part;
    this.stretch = stretch;
    this.constant = constant;
    int n = stretch.terms().size();
    unknowns = new int[n];
    factor = new double[n];
    int k = 0;
    for (Map.Entry<Integer, Double> term : stretch.terms().entrySet()) {
      unknowns[k] = term.getKey();
      factor[k++] = term.getValue();
    }
    stiffness = new double[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        stiffness[i * n + j] = constant * factor[i] * factor[j];
      }
    }
  }

  @Override
  public String part() {
    return part;
  }

  /** The displacement it resists. */
  public LinearForm stretch() {
    return stretch;
  }

  /** Its stiffness, N/mm or N mm/rad. */
  public double constant() {
    return constant;
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  @Override
  public double[] stiffness() {
    return stiffness;
  }

  @Override
  public double[] forces(double[] u) {
    double s = 0;
    for (int k = 0; k < factor.length; k++) {
      s += factor[k] * u[k];
    }
    double[] f = new double[factor.length];
    for (int k = 0; k < factor.length; k++) {
      f[k] = constant * s * factor[k];
    }
    return f;
  }

  @Override
  public void addForces(double[][] u, double[][] f, int n) {
    double[] s = new double[n];
    for (int k = 0; k < factor.length; k++) {
      Rows.add(s, n, factor[k], u[unknowns[k]]);
    }
    for (int c = 0; c < n; c++) {
      s[c] *= constant;
    }
    for (int k = 0; k < factor.length; k++) {
      Rows.add(f[unknowns[k]], n, factor[k], s);
    }
  }
}
