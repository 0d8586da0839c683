package org.stoutwork.linear;

/** What comes of trying to factorise a symmetric matrix that ought to be positive definite. */
public sealed interface Factorisation permits LdlFactor, Factorisation.Singular {

  /**
   * The matrix is not positive definite.
   *
   * @param unknown the unknown at whose turn the pivot failed
   * @param pivotRatio the failed pivot relative to its diagonal entry
   * @param direction a vector along which the matrix offers (almost) no resistance, largest entry
   *     of the failed unknown's group about 1
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Singular(int unknown, double pivotRatio, double[] direction) implements Factorisation {}
}
