package org.stoutwork.working;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/** The pad that keeps every line. Used by one calculation at a time; not thread-safe. */
public final class RecordingPad implements Pad {

  private final List<Line> lines = new ArrayList<>();

  RecordingPad() {}

  @Override
  public double take(Formula formula, double... values) {
    Line.Calculated line = Line.Calculated.of(formula, values);
    lines.add(line);
    return line.value();
  }

  @Override
  public double given(String symbol, String meaning, double value, Unit unit, Source source) {
    lines.add(new Line.Given(new Symbol(symbol, meaning, unit), value, source));
    return value;
  }

  @Override
  public void remark(String sentence) {
    lines.add(new Line.Remark(sentence));
  }

  @Override
  public void include(Working working) {
    lines.addAll(working.lines());
  }

  @Override
  public boolean keepsLines() {
    return true;
  }

  /** What was written so far, as a working. */
  public Working working() {
    return new Working(lines);
  }
}
