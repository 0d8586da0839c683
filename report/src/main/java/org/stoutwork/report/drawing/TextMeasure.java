package org.stoutwork.report.drawing;

/**
 * Knows how wide text is in the type that will print it. Whoever lays out text asks here, so that
 * what fits on the screen of a test fits in the print.
 */
public interface TextMeasure {

  /** Millimetres in a point. */
  double MM_PER_POINT = 25.4 / 72;

  /** Height of a capital letter above the base line, in parts of the type's size. */
  double CAPITAL = 0.64;

  /** Highest ink above the base line of text without indices, in parts of the type's size. */
  double ASCENT = 0.78;

  /** Lowest ink below the base line, in parts of the type's size. */
  double DESCENT = 0.25;

  /**
   * Width of a stretch of text, mm.
   *
   * @param text its characters
   * @param face its face
   * @param points its size
   */
  double width(String text, Face face, double points);

  /** Width of a run that belongs to text of the given size, mm. */
  default double width(Run run, double points) {
    return width(run.text(), run.face(), points * run.level().size());
  }

  /** Width of a line of text, mm. */
  default double width(RichText text, double points) {
    double sum = 0;
    for (Run run : text.runs()) {
      sum += width(run, points);
    }
    return sum;
  }
}
