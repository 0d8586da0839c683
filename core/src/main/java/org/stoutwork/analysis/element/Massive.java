package org.stoutwork.analysis.element;

/** An element with mass. */
public interface Massive {
  /**
   * Symmetric consistent mass, row by row, in the order of the element's unknowns; t, t mm².
   *
   * @param rotary whether sections resist turning in bending
   */
  double[] mass(boolean rotary);
}
