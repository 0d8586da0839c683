package org.stoutwork.report.drawing;

import java.util.List;
import java.util.stream.Stream;

/** Finds how far marks reach on paper, including the width of their lines. */
public final class Extent {

  private Extent() {}

  /** The rectangle that holds a mark. */
  public static Bounds of(Mark mark, TextMeasure measure) {
    if (mark instanceof Mark.Path path) {
      return Bounds.around(path.points()).grown(path.stroke().width() / 2);
    }
    if (mark instanceof Mark.Polygon polygon) {
      return Bounds.around(polygon.points()).grown(half(polygon.outline()));
    }
    if (mark instanceof Mark.Arc arc) {
      return Bounds.around(arc.polyline()).grown(half(arc.outline()));
    }
    return ofLabel((Mark.Label) mark, measure);
  }

  /** The rectangle that holds several marks; there must be at least one. */
  public static Bounds of(List<Mark> marks, TextMeasure measure) {
    return marks.stream().map(m -> of(m, measure)).reduce(Bounds::and).orElseThrow();
  }

  private static double half(java.util.Optional<Stroke> outline) {
    return outline.map(Stroke::width).orElse(0.0) / 2;
  }

  private static Bounds ofLabel(Mark.Label label, TextMeasure measure) {
    double em = label.points() * TextMeasure.MM_PER_POINT;
    double width = measure.width(label.text(), label.points());
    double left = -width * label.align().part();
    double up = TextMeasure.ASCENT * em;
    double down = -TextMeasure.DESCENT * em;
    return Bounds.around(
        Stream.of(
                corner(label, left, up),
                corner(label, left + width, up),
                corner(label, left + width, down),
                corner(label, left, down))
            .toList());
  }

  private static Point corner(Mark.Label label, double along, double up) {
    return label.at().polar(label.degrees(), along).polar(label.degrees() + 90, up);
  }
}
