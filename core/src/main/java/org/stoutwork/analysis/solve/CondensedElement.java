package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.Element;

/** The stiffness that a reduced panel shows at its ties. */
final class CondensedElement implements Element {
  private final String part;
  private final int[] unknowns;
  private final double[] stiffness;

  CondensedElement(String part, int[] unknowns, double[] stiffness) {
    this.part = part;
    this.unknowns = unknowns;
    this.stiffness = stiffness;
  }

  @Override
  public String part() {
    return part;
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  @Override
  public double[] stiffness() {
    return stiffness;
  }
}
