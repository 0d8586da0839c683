package org.stoutwork.report.drawing.draughting;

import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;

/** The name of a view with its scale, over a short rule. */
public final class ViewTitle {

  private ViewTitle() {}

  /**
   * A title with its left end at a point on its base line.
   *
   * @param at left end of the base line
   * @param name what is seen and from where, such as "Front"
   * @param note scale or unit; may be empty
   * @param points size
   * @param measure of the type
   */
  public static List<Mark> at(
      Point at, String name, String note, double points, TextMeasure measure) {
    RichText title = RichText.plain(name, Face.BOLD);
    RichText text = note.isEmpty() ? title : title.then(RichText.plain("\u2002" + note));
    double width = measure.width(text, points);
    return List.of(
        new Mark.Label(at, text, points, Align.LEFT, 0, Ink.BLACK),
        new Mark.Path(List.of(at.plus(0, 1.3), at.plus(width, 1.3)), Stroke.of(0.25, Ink.BLACK)));
  }
}
