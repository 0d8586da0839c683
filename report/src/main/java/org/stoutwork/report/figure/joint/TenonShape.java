package org.stoutwork.report.figure.joint;

import java.util.List;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.report.drawing.Point;

/** Tenons and bridles with their pegs and wedges. */
final class TenonShape {

  private TenonShape() {}

  static void draw(Views v, MortiseAndTenon j) {
    double low = j.shoulderBelow();
    double high = low + j.height();
    double length = j.length();
    double top = high + j.haunch().map(MortiseAndTenon.Haunch::height).orElse(0.0);
    double haunch = j.haunch().map(MortiseAndTenon.Haunch::length).orElse(0.0);
    v.postCut()
        .rail(
            new Point(0, top),
            new Point(-haunch, top),
            new Point(-haunch, high),
            new Point(-length, high),
            new Point(-length, low),
            new Point(0, low))
        .faces()
        .tenons(low, j.height(), j.thickness(), j.count(), j.offCentre());
    if (haunch > 0) {
      haunch(v, j, high, top);
      v.section.below(-haunch, high, 0, high, 0);
    }
    v.shoulder.right(v.members().railThickness() / 2, 0, 0, low, high, top, v.depth());
    fit(v, j.fit(), low, high, length);
    v.section.below(-length, low, 0, low, j.fit() instanceof Fit.Pegged ? 1 : 0);
    v.postDepth(1).sizes(1);
  }

  private static void haunch(Views v, MortiseAndTenon j, double high, double top) {
    double from = j.offCentre() - j.mortiseWidth() / 2;
    for (int i = 0; i < j.count(); i++) {
      double x = from + 2 * i * j.thickness();
      v.shoulder.seen(x, high, x + j.thickness(), top);
    }
  }

  static void draw(Views v, Bridle j) {
    double d = v.depth();
    v.postCut()
        .rail(new Point(-v.post(), d), new Point(-v.post(), 0))
        .faces()
        .tenons(0, d, j.thickness(), j.count(), 0);
    v.section.hiddenLine(0, 0, 0, d);
    fit(v, j.fit(), 0, d, v.post());
    v.postDepth(j.fit() instanceof Fit.Pegged ? 1 : 0).sizes(1);
  }

  private static void fit(Views v, Fit fit, double low, double high, double length) {
    if (fit instanceof Fit.Pegged pegged) {
      pegs(v, pegged, low, high, length);
    } else if (fit instanceof Fit.Wedged wedged) {
      wedges(v, wedged, low, high, length);
    }
  }

  private static void pegs(Views v, Fit.Pegged fit, double low, double high, double length) {
    double x = -fit.fromShoulder();
    double d = fit.peg().diameter();
    double[] heights = new double[fit.pegs() + 2];
    heights[0] = low;
    heights[heights.length - 1] = high;
    for (int i = 0; i < fit.pegs(); i++) {
      double z = (low + high) / 2 + (i - (fit.pegs() - 1) / 2.0) * fit.spacing();
      heights[i + 1] = z;
      v.section.round(x, z, d);
      if (fit.drawbored()) {
        v.section.roundHidden(x + fit.offset(), z, d);
      }
      v.section.axis(-v.post(), z, x + d, z);
    }
    v.section.left(-v.post(), 0, heights);
    v.section.below(-length, low, x, heights[1], 0).below(x, heights[1], 0, low, 0);
  }

  private static void wedges(Views v, Fit.Wedged fit, double low, double high, double length) {
    double half = fit.kerf() * Math.tan(Math.toRadians(fit.angle() / 2));
    double[] at =
        fit.wedges() == 1
            ? new double[] {(low + high) / 2}
            : new double[] {low + fit.leaf(), high - fit.leaf()};
    for (double z : at) {
      v.section.solid(
          List.of(
              new Point(-length, z + half),
              new Point(-length, z - half),
              new Point(-length + fit.kerf(), z)));
    }
    if (fit.wedges() == 1) {
      v.section.left(-length, 0, low, at[0], high);
    } else {
      v.section.left(-length, 0, low, at[0], at[1], high);
    }
    v.section.below(-length, low, -length + fit.kerf(), at[0], 0);
  }
}
