package org.stoutwork.report.sheet;

import java.util.Locale;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.RichText;

/**
 * A column of a table.
 *
 * @param head its name, with the unit
 * @param width mm if fixed, else its share of what the fixed columns leave
 * @param fixed whether the width is in millimetres
 * @param align of its cells and its head
 */
public record Column(RichText head, double width, boolean fixed, Align align) {

  /**
   * @throws IllegalArgumentException if the width is not above zero
   */
  public Column {
    if (!(width > 0 && width < 1000)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "column \"%s\" needs a width above 0; %s was given",
              head.characters(),
              width));
    }
  }

  /** A column of a share of the free width, aligned left. */
  public static Column share(double share, String head) {
    return new Column(RichText.of(head), share, false, Align.LEFT);
  }

  /** A column of fixed width, aligned left. */
  public static Column mm(double width, String head) {
    return new Column(RichText.of(head), width, true, Align.LEFT);
  }

  /** The same column aligned right, for numbers. */
  public Column right() {
    return new Column(head, width, fixed, Align.RIGHT);
  }

  /** The same column centred. */
  public Column centred() {
    return new Column(head, width, fixed, Align.CENTRE);
  }
}
