package org.stoutwork.report.file.tree;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes JSON fit for a YAML reader. Two things that JSON allows are refused by it: tabs between
 * values, and the escape {@code \/}. Both are replaced here, in texts that begin with a brace or a
 * bracket only; the columns of messages are put right again by {@link #originalColumn}.
 */
final class FlowText {

  private static final String SLASH_ESCAPE = "\\x2f";
  private static final int GROWTH = SLASH_ESCAPE.length() - 2;
  private static final String BEFORE_A_VALUE = "{[,:?";

  private final StringBuilder prepared = new StringBuilder();
  private final Map<Integer, Set<Integer>> escapes = new HashMap<>();
  private final String text;
  private int line = 1;
  private int lineStart;
  private char significant = '{';

  private FlowText(String text) {
    this.text = text;
  }

  /**
   * Prepares a text.
   *
   * @param text any text
   * @return the prepared text; unchanged when it does not begin with a brace or bracket
   */
  static FlowText of(String text) {
    FlowText flow = new FlowText(text);
    String start = text.stripLeading();
    if (start.startsWith("{") || start.startsWith("[")) {
      flow.walk();
    } else {
      flow.prepared.append(text);
    }
    return flow;
  }

  String prepared() {
    return prepared.toString();
  }

  /**
   * Where a column of the prepared text lies in the original.
   *
   * @param atLine line, counted from 1
   * @param column column in the prepared text, counted from 1
   * @return column in the original, counted from 1
   */
  int originalColumn(int atLine, int column) {
    int before = 0;
    for (int escape : escapes.getOrDefault(atLine, Set.of())) {
      if (escape < column) {
        before++;
      }
    }
    return column - GROWTH * before;
  }

  private void walk() {
    int i = 0;
    while (i < text.length()) {
      char c = text.charAt(i);
      if ((c == '"' || c == '\'') && BEFORE_A_VALUE.indexOf(significant) >= 0) {
        i = quoted(i, c);
        significant = c;
      } else if (c == '#' && (i == 0 || Character.isWhitespace(text.charAt(i - 1)))) {
        i = comment(i);
      } else {
        copy(i, c == '\t' ? ' ' : c);
        significant = Character.isWhitespace(c) ? significant : c;
        i++;
      }
    }
  }

  /** Copies a quoted text and returns the index behind its closing quote. */
  private int quoted(int from, char quote) {
    copy(from, quote);
    int i = from + 1;
    while (i < text.length() && text.charAt(i) != quote) {
      if (quote == '"' && text.charAt(i) == '\\' && i + 1 < text.length()) {
        escape(i);
        i += 2;
      } else {
        copy(i, text.charAt(i));
        i++;
      }
    }
    if (i < text.length()) {
      copy(i, quote);
    }
    return i + 1;
  }

  private void escape(int at) {
    if (text.charAt(at + 1) == '/') {
      int column = prepared.codePointCount(lineStart, prepared.length()) + 1;
      escapes.computeIfAbsent(line, key -> new TreeSet<>()).add(column);
      prepared.append(SLASH_ESCAPE);
    } else {
      copy(at, '\\');
      copy(at + 1, text.charAt(at + 1));
    }
  }

  private int comment(int from) {
    int i = from;
    while (i < text.length() && !LineBreaks.endsLine(text, i)) {
      copy(i, text.charAt(i));
      i++;
    }
    return i;
  }

  private void copy(int at, char c) {
    prepared.append(c);
    if (LineBreaks.endsLine(text, at)) {
      line++;
      lineStart = prepared.length();
    }
  }
}
