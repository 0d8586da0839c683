package org.stoutwork.report.sheet;

import java.util.Locale;
import org.stoutwork.report.drawing.RichText;

/**
 * A heading. It never stands alone at the foot of a page.
 *
 * @param level 1 to 3
 * @param text what it says
 * @param numbered whether it gets a section number
 * @param anchor name by which text refers to it as {@code {page:name}} and {@code {section:name}};
 *     empty for none
 */
public record Heading(int level, RichText text, boolean numbered, String anchor) implements Block {

  /**
   * @throws IllegalArgumentException if the level is not 1, 2 or 3
   */
  public Heading {
    if (level < 1 || level > 3) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "headings have level 1, 2 or 3; %d was given", level));
    }
  }

  /** A numbered heading without a name. */
  public static Heading of(int level, String markup) {
    return new Heading(level, RichText.of(markup), true, "");
  }

  /** A numbered heading that text can refer to. */
  public static Heading of(int level, String markup, String anchor) {
    return new Heading(level, RichText.of(markup), true, anchor);
  }

  /** A heading outside the numbering, such as a title. */
  public static Heading unnumbered(int level, String markup) {
    return new Heading(level, RichText.of(markup), false, "");
  }
}
