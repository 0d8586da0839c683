package org.stoutwork.analysis.element;

/** A piece of structure that resists the motion of the unknowns it touches. */
public interface Element {
  /** What a message should call it: the name of the member, tie or panel it belongs to. */
  String part();

  /** The unknowns it touches (6 × vertex + direction), each once. Do not change the array. */
  int[] unknowns();

  /**
   * Symmetric stiffness, row by row, in the order of {@link #unknowns()}; N, mm, rad. Do not change
   * the array.
   */
  double[] stiffness();

  /** Forces that the displacements {@code u} (order of {@link #unknowns()}) call for. */
  default double[] forces(double[] u) {
    int n = u.length;
    double[] k = stiffness();
    double[] f = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = 0;
      for (int j = 0; j < n; j++) {
        sum += k[i * n + j] * u[j];
      }
      f[i] = sum;
    }
    return f;
  }

  /**
   * Adds the forces that each of several displacements calls for, to the bit those of {@link
   * #forces}.
   *
   * @param u a row for each unknown of the structure, a column for each displacement
   * @param f forces, laid out like {@code u}
   * @param n number of columns
   */
  default void addForces(double[][] u, double[][] f, int n) {
    int[] unknowns = unknowns();
    double[] own = new double[unknowns.length];
    for (int c = 0; c < n; c++) {
      for (int i = 0; i < own.length; i++) {
        own[i] = u[unknowns[i]][c];
      }
      double[] forces = forces(own);
      for (int i = 0; i < own.length; i++) {
        f[unknowns[i]][c] += forces[i];
      }
    }
  }
}
