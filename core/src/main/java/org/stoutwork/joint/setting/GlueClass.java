package org.stoutwork.joint.setting;

/**
 * The class to which a glue was tested. Moisture limits follow the fields of use that the standards
 * describe; EN 204, EN 301 and EN 15425, from memory. Every class asks for 10 MPa of thin lines on
 * beech, dry.
 */
public enum GlueClass {
  /** Dry rooms. */
  D1("EN 204 class D1", false, 15),
  /** Rooms that are damp for a time. */
  D2("EN 204 class D2", false, 18),
  /** Rooms that are often damp, and outside under a roof. */
  D3("EN 204 class D3", false, 20),
  /** Wet rooms, and outside under a coating. */
  D4("EN 204 class D4", false, 24),
  /** Structural, in service classes 1 and 2. */
  STRUCTURAL_II("EN 301 type II", true, 20),
  /** Structural, in all service classes. */
  STRUCTURAL_I("EN 301 type I", true, 30);

  /** Shear strength that every class asks for, dry, along the grain, MPa. */
  public static final double DRY_SHEAR = 10;

  private final String words;
  private final boolean structural;
  private final double wettest;

  GlueClass(String words, boolean structural, double wettest) {
    this.words = words;
    this.structural = structural;
    this.wettest = wettest;
  }

  /** The class as a document names it. */
  public String words() {
    return words;
  }

  /** Whether it is a structural adhesive in the sense of EN 301. */
  public boolean structural() {
    return structural;
  }

  /** Moisture content of the wood that it may live with, %. */
  public double wettest() {
    return wettest;
  }
}
