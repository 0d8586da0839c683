package org.stoutwork.report.file.tree;

/** Lines as the YAML reader counts them: LF, CR LF, CR, NEL, and the two Unicode separators. */
final class LineBreaks {

  private LineBreaks() {}

  /**
   * Whether a line ends behind a character.
   *
   * @param text the text
   * @param at index of the character
   * @return true for a break, but not for the CR of a CR LF
   */
  static boolean endsLine(String text, int at) {
    return switch (text.charAt(at)) {
      case '\n', '\u0085', '\u2028', '\u2029' -> true;
      case '\r' -> at + 1 >= text.length() || text.charAt(at + 1) != '\n';
      default -> false;
    };
  }

  /**
   * One line of a text.
   *
   * @param text the text
   * @param number counted from 1
   * @return the line without its break; empty behind the end of the text
   */
  static String line(String text, int number) {
    int start = start(text, number);
    int end = start;
    while (end < text.length() && !endsLine(text, end)) {
      end++;
    }
    String line = text.substring(start, end);
    return line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
  }

  /**
   * The spot of a character.
   *
   * @param file the name of the file
   * @param text the text
   * @param at index of the character, up to and including the length
   * @return line and column, counted from 1
   */
  static Spot spot(String file, String text, int at) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < at; i++) {
      if (endsLine(text, i)) {
        line++;
        lineStart = i + 1;
      }
    }
    return new Spot(file, line, text.codePointCount(lineStart, at) + 1);
  }

  private static int start(String text, int number) {
    int line = 1;
    int i = 0;
    while (line < number && i < text.length()) {
      if (endsLine(text, i)) {
        line++;
      }
      i++;
    }
    return i;
  }
}
