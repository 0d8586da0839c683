package org.stoutwork.working;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The functions that a formula may use. Angles are in radians. */
public enum Function {
  SQRT,
  ABS,
  SIN,
  COS,
  TAN,
  ATAN,
  EXP,
  LN,
  MIN,
  MAX;

  /** The name as it is written in a formula. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Function> named(String word) {
    return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
  }

  boolean takesSeveral() {
    return this == MIN || this == MAX;
  }

  double of(double x) {
    return switch (this) {
      case SQRT -> Math.sqrt(x);
      case ABS -> Math.abs(x);
      case SIN -> Math.sin(x);
      case COS -> Math.cos(x);
      case TAN -> Math.tan(x);
      case ATAN -> Math.atan(x);
      case EXP -> Math.exp(x);
      case LN -> Math.log(x);
      case MIN, MAX -> x;
    };
  }
}
