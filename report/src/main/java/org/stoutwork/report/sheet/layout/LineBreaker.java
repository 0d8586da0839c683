package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Run;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * Breaks text into lines at blanks and after hyphens and dashes. A word wider than the line is
 * broken anywhere rather than printed over the edge. Non-breaking blanks hold.
 */
final class LineBreaker {

  private final TextMeasure measure;
  private final double points;
  private final double width;
  private final List<RichText> lines = new ArrayList<>();
  private final List<Run> line = new ArrayList<>();
  private double used;

  private LineBreaker(TextMeasure measure, double points, double width) {
    this.measure = measure;
    this.points = points;
    this.width = width;
  }

  /** The lines of a text; one empty line for an empty text. */
  static List<RichText> lines(RichText text, double points, double width, TextMeasure measure) {
    LineBreaker breaker = new LineBreaker(measure, points, width);
    for (Word word : Word.of(text)) {
      breaker.put(word);
    }
    breaker.finish();
    return breaker.lines;
  }

  private void put(Word word) {
    double wide = widthOf(word.runs());
    double blank = line.isEmpty() ? 0 : widthOf(word.gap());
    if (used + blank + wide <= width + 1e-9) {
      take(word, blank + wide);
    } else if (wide <= width) {
      finish();
      take(word, wide);
    } else {
      force(word);
    }
  }

  private void take(Word word, double wide) {
    if (!line.isEmpty()) {
      line.addAll(word.gap());
    }
    line.addAll(word.runs());
    used += wide;
  }

  private void force(Word word) {
    if (!line.isEmpty()) {
      finish();
    }
    for (Run run : word.runs()) {
      run.text()
          .codePoints()
          .forEach(
              c -> {
                Run sign = run.with(Character.toString(c));
                double wide = measure.width(sign, points);
                if (used + wide > width && !line.isEmpty()) {
                  finish();
                }
                line.add(sign);
                used += wide;
              });
    }
  }

  private void finish() {
    lines.add(new RichText(Word.merged(line)));
    line.clear();
    used = 0;
  }

  private double widthOf(List<Run> runs) {
    double sum = 0;
    for (Run run : runs) {
      sum += measure.width(run, points);
    }
    return sum;
  }
}
