package org.stoutwork.joint.stiffness;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/** Low, mean and high of one spring. */
record Range(double low, double mean, double high) {

  Range {
    if (!(low >= 0 && mean >= low && high >= mean)) {
      throw new IllegalStateException(
          "springs out of order: low %s, mean %s, high %s".formatted(low, mean, high));
    }
  }

  static final Range NOTHING = new Range(0, 0, 0);

  static Range rigid() {
    return new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** A reference stiffness times three factors that are a judgement. */
  static Range of(double reference, double low, double mean, double high) {
    return new Range(low * reference, mean * reference, high * reference);
  }

  Range times(double factor) {
    return new Range(low * factor, mean * factor, high * factor);
  }

  Range plus(Range other) {
    return new Range(low + other.low, mean + other.mean, high + other.high);
  }

  /** Writes the three levels down. */
  Range noted(Pad pad, String symbol, String meaning, Unit unit, Source source) {
    pad.given(symbol + "_low", meaning + ", low", low, unit, source);
    pad.given(symbol + "_mean", meaning + ", mean", mean, unit, source);
    pad.given(symbol + "_high", meaning + ", high", high, unit, source);
    return this;
  }
}
