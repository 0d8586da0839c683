package org.stoutwork.report.drawing.draughting;

import java.util.Locale;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Point;

/**
 * Puts real lengths on paper at a stated scale: real x runs right, real z runs up.
 *
 * @param origin where the real origin lies on paper
 * @param denominator of the scale: 10 means 1 : 10
 */
public record View(Point origin, double denominator) {

  /** Scales that people measure from with a common rule. */
  private static final double[] USUAL = {1, 2, 2.5, 4, 5, 7.5, 8, 10, 12, 15, 20, 25, 30, 40, 50};

  /**
   * @throws IllegalArgumentException if the denominator is not above zero
   */
  public View {
    if (!(denominator > 0)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "a scale is 1 to a number above 0; 1 to %s was given", denominator));
    }
  }

  /**
   * The view in the largest usual scale that fits an area of the paper, centred in it.
   *
   * @param real real rectangle to show, mm: left and right as x, top as the highest and bottom as
   *     the lowest z
   * @param area of the paper
   */
  public static View fitting(RealBox real, Bounds area) {
    double needed = Math.max(real.width() / area.width(), real.height() / area.height());
    double scale = usualAtLeast(needed);
    double left = area.left() + (area.width() - real.width() / scale) / 2;
    double foot = area.bottom() - (area.height() - real.height() / scale) / 2;
    return new View(new Point(left - real.minX() / scale, foot + real.minZ() / scale), scale);
  }

  /**
   * A real rectangle, mm.
   *
   * @param minX smallest x
   * @param minZ smallest z
   * @param maxX largest x
   * @param maxZ largest z
   */
  public record RealBox(double minX, double minZ, double maxX, double maxZ) {

    /**
     * @throws IllegalArgumentException if it has no size
     */
    public RealBox {
      if (!(maxX > minX && maxZ > minZ)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "a view needs a width and a height; x %s to %s, z %s to %s was given",
                minX,
                maxX,
                minZ,
                maxZ));
      }
    }

    double width() {
      return maxX - minX;
    }

    double height() {
      return maxZ - minZ;
    }
  }

  /** A real place on paper. */
  public Point at(double x, double z) {
    return origin.plus(x / denominator, -z / denominator);
  }

  /** A real length on paper, mm. */
  public double length(double real) {
    return real / denominator;
  }

  /** The scale as it is printed. */
  public String scale() {
    String number =
        denominator == Math.rint(denominator)
            ? Long.toString((long) denominator)
            : Double.toString(denominator);
    return "1\u00a0:\u00a0" + number;
  }

  private static double usualAtLeast(double needed) {
    for (double scale : USUAL) {
      if (scale >= needed * (1 - 1e-12)) {
        return scale;
      }
    }
    return Math.ceil(needed / 50) * 50;
  }
}
