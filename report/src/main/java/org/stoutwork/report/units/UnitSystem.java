package org.stoutwork.report.units;

/** The two families of units in which a sheet can be read. Workings are always in SI units. */
public enum UnitSystem {
  /** Millimetres, newtons, kilograms. */
  SI("SI units"),
  /** Inches, pounds-force, pounds. */
  INCH_POUND("inch-pound units");

  private final String words;

  UnitSystem(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }
}
