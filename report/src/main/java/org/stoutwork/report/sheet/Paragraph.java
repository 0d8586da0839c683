package org.stoutwork.report.sheet;

import org.stoutwork.report.drawing.RichText;

/**
 * A paragraph.
 *
 * @param text what it says
 * @param manner how it is set
 */
public record Paragraph(RichText text, Manner manner) implements Block {

  /** How a paragraph is set. */
  public enum Manner {
    BODY,
    /** Larger: the one sentence a reader must not miss. */
    LEAD,
    /** The name of the sheet on its first page. */
    TITLE,
    /** Secondary: remarks and sources. */
    NOTE
  }

  /** A paragraph of body text. */
  public static Paragraph of(String markup) {
    return new Paragraph(RichText.of(markup), Manner.BODY);
  }

  /** A remark. */
  public static Paragraph note(String markup) {
    return new Paragraph(RichText.of(markup), Manner.NOTE);
  }

  /** A leading sentence. */
  public static Paragraph lead(String markup) {
    return new Paragraph(RichText.of(markup), Manner.LEAD);
  }

  /** The sheet's title. */
  public static Paragraph title(String markup) {
    return new Paragraph(RichText.of(markup), Manner.TITLE);
  }
}
