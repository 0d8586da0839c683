package org.stoutwork.working;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * What a calculation writes on. The calculation is written once; whether its lines are kept is the
 * choice of whoever hands it a pad.
 */
public interface Pad {

  /** Evaluates a formula. The value returned is the value that is printed. */
  double take(Formula formula, double... values);

  /** Notes a value that enters from elsewhere: an input, a table, the analysis. Returns it. */
  double given(String symbol, String meaning, double value, Unit unit, Source source);

  /** Notes a sentence a reader needs: a choice made, a limit that was met. */
  void remark(String sentence);

  /** Takes over the lines of another working, such as that of a design strength. */
  void include(Working working);

  /** Whether lines are kept; lets a caller skip the making of costly words. */
  boolean keepsLines();

  /** A pad that only calculates. */
  static Pad blank() {
    return BlankPad.INSTANCE;
  }

  /** A pad that keeps every line. */
  static RecordingPad recording() {
    return new RecordingPad();
  }
}
