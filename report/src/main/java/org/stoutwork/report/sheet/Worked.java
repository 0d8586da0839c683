package org.stoutwork.report.sheet;

import java.util.List;
import org.stoutwork.working.Line;
import org.stoutwork.working.Working;

/**
 * A calculation, line by line, each line numbered through the sheet so that a checker can disagree
 * at a named one: formula in symbols, numbers put in, result, meaning of the symbols, source.
 *
 * @param lines of the calculation, one or more
 */
public record Worked(List<Line> lines) implements Block {

  /**
   * @throws IllegalArgumentException if there is no line
   */
  public Worked {
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("a working needs at least one line; none was given");
    }
  }

  /** All lines of a working. */
  public static Worked of(Working working) {
    return new Worked(working.lines());
  }
}
