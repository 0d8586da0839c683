package org.stoutwork.working;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/** The pad that only calculates; it has no state and so one serves everybody. */
enum BlankPad implements Pad {
  INSTANCE;

  @Override
  public double take(Formula formula, double... values) {
    return formula.value(values);
  }

  @Override
  public double given(String symbol, String meaning, double value, Unit unit, Source source) {
    return value;
  }

  @Override
  public void remark(String sentence) {
    // Nobody reads it.
  }

  @Override
  public void include(Working working) {
    // Nobody reads it.
  }

  @Override
  public boolean keepsLines() {
    return false;
  }
}
