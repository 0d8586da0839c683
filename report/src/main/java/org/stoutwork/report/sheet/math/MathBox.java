package org.stoutwork.report.sheet.math;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Mark;

/**
 * Part of a formula, set.
 *
 * @param width mm
 * @param ascent height above the base line, mm
 * @param descent depth below the base line, mm
 * @param marks with the left end of the base line as origin
 */
public record MathBox(double width, double ascent, double descent, List<Mark> marks) {

  /** Keeps its own copy. */
  public MathBox {
    marks = List.copyOf(marks);
  }

  /** Height from top to foot, mm. */
  public double height() {
    return ascent + descent;
  }

  /** Boxes side by side on one base line. */
  public static MathBox row(List<MathBox> boxes) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    double up = 0;
    double down = 0;
    for (MathBox box : boxes) {
      marks.addAll(box.at(x, 0));
      x += box.width;
      up = Math.max(up, box.ascent);
      down = Math.max(down, box.descent);
    }
    return new MathBox(x, up, down, marks);
  }

  /** The marks moved. */
  public List<Mark> at(double dx, double dy) {
    return marks.stream().map(mark -> mark.moved(dx, dy)).toList();
  }
}
