package org.stoutwork.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads text with a few signs for its look:
 *
 * <pre>
 *   **bold**   //italic//   σ_m  k_{mod}  f_c,0,k    lowered index
 *   mm^2  10^-3  s^{2/3}                             raised index; a hyphen in it becomes a minus
 *   {page:cautions}                                  a number known when pages are made
 *   \_  \^  \*  \/  \{  \\                           the sign itself
 * </pre>
 *
 * An index without braces takes letters and digits, and a comma or point that is followed by
 * another of them. Line breaks and tabs read as blanks.
 */
public final class Markup {

  private final String source;
  private final List<Run> runs = new ArrayList<>();
  private final StringBuilder pending = new StringBuilder();
  private boolean bold;
  private boolean italic;
  private int at;

  private Markup(String source) {
    this.source = source;
  }

  /**
   * Reads a marked-up string.
   *
   * @throws IllegalArgumentException if a brace is not closed
   */
  public static RichText parse(String text) {
    return new Markup(text).read();
  }

  /** The string that reads as the given characters with no look at all. */
  public static String escape(String characters) {
    return characters.replaceAll("([\\\\_^*/{}])", "\\\\$1");
  }

  /**
   * The string that reads as the given characters, but with symbols such as k_cr set with their
   * index.
   */
  public static String prose(String characters) {
    return escape(characters)
        .replaceAll("(?<![\\p{L}\\p{N}])(\\p{L})\\\\_(\\p{L}{1,4}\\b|\\p{N}{1,2}\\b)", "$1_{$2}");
  }

  private RichText read() {
    while (at < source.length()) {
      step(source.charAt(at));
    }
    flush();
    return new RichText(runs);
  }

  private void step(char c) {
    if (c == '\\' && at + 1 < source.length()) {
      pending.append(source.charAt(at + 1));
      at += 2;
    } else if (source.startsWith("**", at)) {
      flush();
      bold = !bold;
      at += 2;
    } else if (source.startsWith("//", at) && !(at > 0 && source.charAt(at - 1) == ':')) {
      flush();
      italic = !italic;
      at += 2;
    } else if (c == '_' && startsIndex(at + 1, false)) {
      index(Level.SUB);
    } else if (c == '^' && startsIndex(at + 1, true)) {
      index(Level.SUPER);
    } else if (c == '{') {
      flush();
      runs.add(new Run(braced(), face(), Level.BASE, true));
    } else {
      pending.append(Character.isWhitespace(c) ? ' ' : c);
      at++;
    }
  }

  private boolean startsIndex(int place, boolean signAllowed) {
    if (place >= source.length()) {
      return false;
    }
    char c = source.charAt(place);
    boolean sign = signAllowed && (c == '-' || c == '\u2212' || c == '+');
    return c == '{' || isIndexSign(c) || (sign && place + 1 < source.length());
  }

  private void index(Level level) {
    flush();
    at++;
    String text = source.charAt(at) == '{' ? braced() : unbraced();
    runs.add(Run.of(level == Level.SUPER ? text.replace('-', '\u2212') : text, indexFace(), level));
  }

  private String unbraced() {
    int end = at + 1;
    while (end < source.length() && continuesIndex(end)) {
      end++;
    }
    String text = source.substring(at, end);
    at = end;
    return text;
  }

  private boolean continuesIndex(int place) {
    char c = source.charAt(place);
    boolean joins = c == ',' || c == '.';
    return isIndexSign(c)
        || (joins && place + 1 < source.length() && isIndexSign(source.charAt(place + 1)));
  }

  private static boolean isIndexSign(char c) {
    return Character.isLetterOrDigit(c);
  }

  private String braced() {
    int end = source.indexOf('}', at);
    if (end < 0) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "text \"%s\" opens a brace at %d and does not close it; write \\{ for the sign itself",
              source,
              at));
    }
    String inner = source.substring(at + 1, end);
    at = end + 1;
    return inner;
  }

  private Face face() {
    return bold ? Face.BOLD : italic ? Face.ITALIC : Face.REGULAR;
  }

  private Face indexFace() {
    return bold ? Face.BOLD : Face.REGULAR;
  }

  private void flush() {
    if (pending.length() > 0) {
      runs.add(Run.of(pending.toString(), face(), Level.BASE));
      pending.setLength(0);
    }
  }
}
