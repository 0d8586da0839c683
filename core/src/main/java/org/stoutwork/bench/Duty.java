package org.stoutwork.bench;

/**
 * What the bench is for. Each duty sets the actions and the limits of the serviceability checks.
 */
public enum Duty {
  /** Fitting, gluing and finishing. */
  LIGHT_ASSEMBLY("light assembly"),
  /** Sawing, planing and chopping by one person. */
  GENERAL_JOINERY("general joinery"),
  /** Hours of planing, long or hard stock. */
  HEAVY_PLANING("heavy planing"),
  /** A fixed machine stands on the top. */
  MACHINE_SUPPORT("machine support");

  private final String words;

  Duty(String words) {
    this.words = words;
  }

  /** The duty as it is written and printed. */
  public String words() {
    return words;
  }
}
