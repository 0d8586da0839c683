package org.stoutwork.report.drawing;

import java.util.Objects;

/**
 * A stretch of text of one look.
 *
 * @param text its characters; for a reference, the name of what it refers to
 * @param face regular, bold or italic
 * @param level on the base line, or an index
 * @param reference whether the text stands for a number that is known only when pages are made
 */
public record Run(String text, Face face, Level level, boolean reference) {

  /** Checks that nothing is missing. */
  public Run {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(face, "face");
    Objects.requireNonNull(level, "level");
  }

  /** A run of plain characters. */
  public static Run of(String text, Face face, Level level) {
    return new Run(text, face, level, false);
  }

  /** The same look with other characters. */
  public Run with(String other) {
    return new Run(other, face, level, false);
  }
}
