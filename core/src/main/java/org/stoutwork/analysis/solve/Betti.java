package org.stoutwork.analysis.solve;

/**
 * Forces without meaning and what they do, to hold against every solution of the same equations:
 * the work of either set of forces on the motions of the other must be the same (E. Betti, 1872).
 *
 * @param forces on all unknowns
 * @param u displacements that they cause
 * @param conditionForce forces of the conditions then
 */
@SuppressWarnings("ArrayRecordComponent") // made once, never compared
record Betti(double[] forces, double[] u, double[] conditionForce) {

  /** Part of the golden section that is left over: its multiples spread evenly over 0 to 1. */
  private static final double GOLDEN = 0.6180339887498949;

  /** Forces of either sense on all unknowns, the same in every run. */
  static double[] forces(int unknowns, double reach) {
    double[] p = new double[unknowns];
    for (int i = 0; i < p.length; i++) {
      double even = (i + 1) * GOLDEN;
      p[i] = (even - Math.floor(even) - 0.5) * (i % 6 < 3 ? 1 : reach);
    }
    return p;
  }

  /**
   * How far the works differ, relative to the sum of the sizes of their parts.
   *
   * @param acting forces of the other solution
   * @param values given displacements of its conditions
   * @param moved its displacements
   */
  double error(double[] acting, double[] values, double[] moved) {
    double difference = 0;
    double size = 0;
    for (int i = 0; i < moved.length; i++) {
      double own = acting[i] * u[i];
      double other = forces[i] * moved[i];
      difference += own - other;
      size += Math.abs(own) + Math.abs(other);
    }
    for (int c = 0; c < values.length; c++) {
      double work = conditionForce[c] * values[c];
      difference -= work;
      size += Math.abs(work);
    }
    return size == 0 ? 0 : Math.abs(difference) / size;
  }
}
