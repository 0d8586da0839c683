package org.stoutwork.report.sheet;

import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.RichText;

/**
 * One figure, or two side by side, with captions that number themselves.
 *
 * @param figures one or two
 */
public record Figures(List<Figure> figures) implements Block {

  /**
   * @throws IllegalArgumentException if there are not one or two
   */
  public Figures {
    figures = List.copyOf(figures);
    if (figures.isEmpty() || figures.size() > 2) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "one or two figures stand side by side; %d were given", figures.size()));
    }
  }

  /** One figure over the whole column. */
  public static Figures of(Figure figure) {
    return new Figures(List.of(figure));
  }

  /** Two figures side by side. */
  public static Figures of(Figure left, Figure right) {
    return new Figures(List.of(left, right));
  }

  /**
   * A drawing with its caption. A drawing wider than its column is scaled down, but never so far
   * that its lettering falls below 8 points: draw it for the width it will have.
   *
   * @param drawing what is shown
   * @param caption below it
   * @param alternative what it shows and its governing values, for readers who cannot see it
   * @param anchor name by which text refers to it as {@code {figure:name}} and {@code {page:name}};
   *     empty for none
   */
  public record Figure(Drawing drawing, RichText caption, String alternative, String anchor) {

    /**
     * @throws IllegalArgumentException if the alternative text is blank
     */
    public Figure {
      if (alternative.isBlank()) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "figure \"%s\" needs a text that says what it shows",
                caption.characters()));
      }
    }

    /** A figure with a marked-up caption. */
    public static Figure of(Drawing drawing, String caption, String alternative, String anchor) {
      return new Figure(drawing, RichText.of(caption), alternative, anchor);
    }
  }
}
