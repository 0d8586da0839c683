package org.stoutwork.report.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Marks within a frame on paper.
 *
 * @param width of the frame, mm
 * @param height of the frame, mm
 * @param marks in the order of drawing; later ones cover earlier ones
 */
public record Drawing(double width, double height, List<Mark> marks) {

  /**
   * @throws IllegalArgumentException if the frame has no size
   */
  public Drawing {
    if (!(width > 0 && height > 0 && width < 2000 && height < 2000)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a drawing is above 0 mm and below 2000 mm each way; %s mm by %s mm was given",
              width,
              height));
    }
    marks = List.copyOf(marks);
  }

  /**
   * Checks that nothing is drawn outside the frame.
   *
   * @throws IllegalStateException naming the first mark that leaves it
   */
  public Drawing requireInside(TextMeasure measure) {
    Bounds frame = new Bounds(0, 0, width, height);
    for (Mark mark : marks) {
      Bounds reach = Extent.of(mark, measure);
      if (!frame.holds(reach, 0.3)) {
        throw new IllegalStateException(
            String.format(
                Locale.ROOT,
                "a mark leaves the frame of %s mm by %s mm: %s reaches %s",
                width,
                height,
                mark,
                reach));
      }
    }
    return this;
  }

  /** The smallest type in the drawing, points; infinite if it has no lettering. */
  public double smallestType() {
    return marks.stream()
        .filter(Mark.Label.class::isInstance)
        .mapToDouble(m -> ((Mark.Label) m).points())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
