package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Run;

/**
 * What stands between two places where a line may break.
 *
 * @param gap blanks before it, which vanish at the head of a line
 * @param runs its characters
 */
record Word(List<Run> gap, List<Run> runs) {

  /** The words of a text. */
  static List<Word> of(RichText text) {
    Splitter splitter = new Splitter();
    for (Run run : text.runs()) {
      splitter.take(run);
    }
    splitter.close();
    return splitter.words;
  }

  /** Neighbours of one look joined, so that each is printed in one go. */
  static List<Run> merged(List<Run> runs) {
    List<Run> out = new ArrayList<>();
    for (Run run : runs) {
      Run before = out.isEmpty() ? null : out.get(out.size() - 1);
      if (before != null && before.face() == run.face() && before.level() == run.level()) {
        out.set(out.size() - 1, before.with(before.text() + run.text()));
      } else {
        out.add(run);
      }
    }
    return out;
  }

  private static final class Splitter {
    private final List<Word> words = new ArrayList<>();
    private final List<Run> gap = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();

    void take(Run run) {
      String text = run.text();
      int start = 0;
      for (int i = 0; i < text.length(); i++) {
        if (text.charAt(i) == ' ') {
          add(run, start, i);
          close();
          gap.add(run.with(" "));
          start = i + 1;
        } else if (breaksAfter(text, i)) {
          add(run, start, i + 1);
          close();
          start = i + 1;
        }
      }
      add(run, start, text.length());
    }

    private void add(Run run, int from, int to) {
      if (to > from) {
        runs.add(run.with(run.text().substring(from, to)));
      }
    }

    void close() {
      if (!runs.isEmpty()) {
        words.add(new Word(List.copyOf(gap), List.copyOf(runs)));
        gap.clear();
        runs.clear();
      }
    }

    private static boolean breaksAfter(String text, int i) {
      char c = text.charAt(i);
      boolean dash = c == '-' || c == '\u2013' || c == '\u2014';
      return dash
          && i > 0
          && i + 1 < text.length()
          && Character.isLetterOrDigit(text.charAt(i - 1))
          && Character.isLetter(text.charAt(i + 1));
    }
  }
}
