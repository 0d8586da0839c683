package org.stoutwork.reference.joints;

import java.util.List;
import org.stoutwork.working.Line;
import org.stoutwork.working.RecordingPad;

/** What a calculation of the product wrote down. */
final class Lines {

  private Lines() {}

  /** All calculated lines for a symbol, in order. */
  static List<Line.Calculated> of(RecordingPad pad, String symbol) {
    return pad.working().lines().stream()
        .filter(Line.Calculated.class::isInstance)
        .map(Line.Calculated.class::cast)
        .filter(line -> line.formula().result().symbol().equals(symbol))
        .toList();
  }

  /** The value of the only line for a symbol. */
  static double only(RecordingPad pad, String symbol) {
    List<Line.Calculated> found = of(pad, symbol);
    if (found.size() != 1) {
      throw new AssertionError("%s lines for %s".formatted(found.size(), symbol));
    }
    return found.get(0).value();
  }
}
