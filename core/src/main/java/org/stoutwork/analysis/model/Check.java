package org.stoutwork.analysis.model;

/** The refusals shared by the records of this room. */
final class Check {
  private Check() {}

  static void positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          what + " must be above 0 " + unit + ", not " + value + "; give a positive number");
    }
  }

  static void notNegative(String what, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be 0 " + unit + " or more, not " + value);
    }
  }

  static void finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be a finite number, not " + value);
    }
  }

  static String name(String what, String name) {
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("a " + what + " needs a name");
    }
    return name;
  }
}
