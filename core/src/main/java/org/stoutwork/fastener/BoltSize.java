package org.stoutwork.fastener;

/**
 * Metric bolts: nominal diameter and the area that the thread leaves for tension. ISO 898-1 and ISO
 * 262 coarse threads; from memory.
 */
public enum BoltSize {
  M6(6, 20.1),
  M8(8, 36.6),
  M10(10, 58.0),
  M12(12, 84.3),
  M16(16, 157.0);

  private final double diameter;
  private final double stressArea;

  BoltSize(double diameter, double stressArea) {
    this.diameter = diameter;
    this.stressArea = stressArea;
  }

  /** Nominal diameter, mm. */
  public double diameter() {
    return diameter;
  }

  /** Tensile stress area A_s, mm². */
  public double stressArea() {
    return stressArea;
  }
}
