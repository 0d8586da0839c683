package org.stoutwork.report.drawing.draughting;

import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;

/** A filled arrow head. */
final class Arrowhead {

  private Arrowhead() {}

  /** A head with its tip at a point, pointing in a direction. */
  static Mark at(Point tip, double degrees, double length, Ink ink) {
    Point back = tip.polar(degrees, -length);
    double half = length * 0.3;
    return new Mark.Polygon(
        List.of(tip, back.polar(degrees + 90, half), back.polar(degrees - 90, half)),
        Fill.of(ink),
        Optional.empty());
  }
}
