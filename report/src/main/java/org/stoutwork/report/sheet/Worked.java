package org.stoutwork.report.sheet;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.stoutwork.working.Line;
import org.stoutwork.working.Working;

/**
 * A calculation, line by line, each line numbered through the sheet so that a checker can disagree
 * at a named one: formula in symbols, numbers put in, result, meaning of the symbols, source. What
 * was explained before is not explained again: a formula met a second time names the line where it
 * stands first.
 *
 * @param lines of the calculation, one or more
 * @param also what stands in brackets behind the result of each line, such as the same amount in
 *     other units; empty for nothing
 */
public record Worked(List<Line> lines, List<String> also) implements Block {

  /**
   * @throws IllegalArgumentException if there is no line, or not one addition a line
   */
  public Worked {
    lines = List.copyOf(lines);
    also = List.copyOf(also);
    if (lines.isEmpty() || lines.size() != also.size()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a working needs at least one line, and an addition for each; %d lines and %d"
                  + " additions were given",
              lines.size(),
              also.size()));
    }
  }

  /** Lines without additions. */
  public Worked(List<Line> lines) {
    this(lines, Collections.nCopies(lines.size(), ""));
  }

  /** All lines of a working. */
  public static Worked of(Working working) {
    return new Worked(working.lines());
  }
}
