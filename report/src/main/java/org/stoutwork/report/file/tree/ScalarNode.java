package org.stoutwork.report.file.tree;

/**
 * A node that holds one value, kept as the text that stands in the file: nothing is converted here.
 *
 * @param spot where it begins
 * @param path where it stands
 * @param style how it was written
 * @param text the text, without quotes
 */
public record ScalarNode(Spot spot, KeyPath path, Style style, String text) implements Node {

  /** How a scalar was written. */
  public enum Style {
    /** Without quotes, and a word. */
    WORD,
    /** Without quotes, and something a YAML reader may take for a number. */
    NUMBER,
    /** Without quotes, and something a YAML reader may take for true or false. */
    TRUTH,
    /** Nothing at all, {@code null} or {@code ~}. */
    EMPTY,
    /** In quotes, or as a block of lines. */
    QUOTED,
    /** Refused while the tree was built, and reported already. */
    REFUSED
  }

  @Override
  public String given() {
    return switch (style) {
      case EMPTY -> "is empty";
      case QUOTED, WORD -> "is " + Quote.of(text);
      case NUMBER, TRUTH -> "is " + Quote.visible(text);
      case REFUSED -> "is refused";
    };
  }
}
