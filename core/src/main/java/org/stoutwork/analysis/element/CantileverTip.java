package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Material;

/**
 * How far the free end of a cantilever moves under loads along it, exact for the Timoshenko theory.
 * Loads that are spread linearly are taken at three places each by Gauss's rule, which is exact for
 * them: what is integrated is of the fourth degree.
 *
 * <p>Unlike {@link BeamField}, which it agrees with, it gives the end alone and costs next to
 * nothing.
 */
final class CantileverTip {
  private static final double OFF_MIDDLE = Math.sqrt(0.15);
  private static final double[] PLACE = {0.5 - OFF_MIDDLE, 0.5, 0.5 + OFF_MIDDLE};
  private static final double[] WEIGHT = {5 / 18.0, 8 / 18.0, 5 / 18.0};

  private final double length;
  private final double ea;
  private final double gj;
  private final double eiy;
  private final double eiz;
  private final double shearY;
  private final double shearZ;

  CantileverTip(double length, CrossSection c, Material m) {
    this.length = length;
    this.ea = m.e() * c.area();
    this.gj = m.g() * c.j();
    this.eiy = m.e() * c.iy();
    this.eiz = m.e() * c.iz();
    this.shearY = c.asy() == 0 ? 0 : 1 / (m.g() * c.asy());
    this.shearZ = c.asz() == 0 ? 0 : 1 / (m.g() * c.asz());
  }

  /** Local displacements and rotations of the end when the start is clamped. */
  double[] under(SpanLoad load) {
    double[] tip = new double[6];
    double[] breaks = load.breaks();
    for (int b = 0; b < breaks.length; b++) {
      for (int i = 0; i < 3; i++) {
        force(tip, i, breaks[b], load.force(i, b));
        moment(tip, i, breaks[b], load.moment(i, b));
      }
    }
    for (int k = 0; k + 1 < breaks.length; k++) {
      double l = breaks[k + 1] - breaks[k];
      for (int g = 0; g < 3; g++) {
        double x = PLACE[g] * l;
        for (int i = 0; i < 3; i++) {
          force(tip, i, breaks[k] + x, WEIGHT[g] * l * load.intensityAt(i, k, x));
        }
      }
    }
    return tip;
  }

  private void force(double[] tip, int axis, double a, double f) {
    if (f == 0) {
      return;
    }
    switch (axis) {
      case 0 -> tip[0] += f * a / ea;
      case 1 -> {
        tip[1] += f * (a * a * (3 * length - a) / (6 * eiz) + a * shearY);
        tip[5] += f * a * a / (2 * eiz);
      }
      default -> {
        tip[2] += f * (a * a * (3 * length - a) / (6 * eiy) + a * shearZ);
        tip[4] -= f * a * a / (2 * eiy);
      }
    }
  }

  private void moment(double[] tip, int axis, double a, double m) {
    if (m == 0) {
      return;
    }
    switch (axis) {
      case 0 -> tip[3] += m * a / gj;
      case 1 -> {
        tip[4] += m * a / eiy;
        tip[2] -= m * a * (length - a / 2) / eiy;
      }
      default -> {
        tip[5] += m * a / eiz;
        tip[1] += m * a * (length - a / 2) / eiz;
      }
    }
  }
}
