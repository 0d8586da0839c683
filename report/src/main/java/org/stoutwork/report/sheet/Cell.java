package org.stoutwork.report.sheet;

import java.util.List;
import org.stoutwork.report.drawing.RichText;

/** What stands in one field of a table. */
public sealed interface Cell {

  /** Marked-up text. */
  static Cell of(String markup) {
    return new Text(RichText.of(markup));
  }

  /** Marked-up texts one below another. */
  static Cell lines(List<String> markups) {
    RichText all = RichText.EMPTY;
    for (String markup : markups) {
      all = all.runs().isEmpty() ? all : all.then(RichText.plain("\n"));
      all = all.then(RichText.of(markup));
    }
    return new Text(all);
  }

  /** A bar. */
  static Cell of(Utilisation utilisation) {
    return new Bar(utilisation);
  }

  /**
   * Text, wrapped to the column; it may hold line ends.
   *
   * @param text what it says
   */
  record Text(RichText text) implements Cell {}

  /**
   * A utilisation bar with its figure and its word.
   *
   * @param utilisation what it shows
   */
  record Bar(Utilisation utilisation) implements Cell {}
}
