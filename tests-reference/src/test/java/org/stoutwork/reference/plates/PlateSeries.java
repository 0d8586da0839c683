package org.stoutwork.reference.plates;

import org.stoutwork.analysis.model.PanelSection;

/**
 * Series solutions of rectangular plates, worked out here without any element.
 *
 * <p>Here w and loads are positive downward, moments positive when they pull the lower face.
 */
final class PlateSeries {
  /** Deflection and stress resultants at a place. */
  record Values(double w, double mx, double my, double qx, double qy) {}

  private PlateSeries() {}

  /**
   * Hard simple support on all sides, even pressure, with transverse shear: Navier's double series
   * of first-order shear theory (J. N. Reddy, <em>Mechanics of Laminated Composite Plates and
   * Shells</em>, 2nd ed., section 5.2, equations from memory; statics of each term re-derived
   * here).
   */
  static Values navier(
      PanelSection s, double a, double b, double q, double x, double y, int terms) {
    double w = 0;
    double mx = 0;
    double my = 0;
    double qx = 0;
    double qy = 0;
    for (int m = 1; m <= terms; m += 2) {
      for (int n = 1; n <= terms; n += 2) {
        double p = m * Math.PI / a;
        double r = n * Math.PI / b;
        double load = 16 * q / (Math.PI * Math.PI * m * n);
        double[] term = term(s, p, r, load);
        double sx = Math.sin(p * x);
        double sy = Math.sin(r * y);
        double cx = Math.cos(p * x);
        double cy = Math.cos(r * y);
        w += term[0] * sx * sy;
        mx -= (s.d11() * p * term[1] + s.d12() * r * term[2]) * sx * sy;
        my -= (s.d12() * p * term[1] + s.d22() * r * term[2]) * sx * sy;
        qx += s.a55() * (p * term[0] + term[1]) * cx * sy;
        qy += s.a44() * (r * term[0] + term[2]) * sx * cy;
      }
    }
    return new Values(w, mx, my, qx, qy);
  }

  /** W, X, Y of w = W sin sin, βx = X cos sin, βy = Y sin cos: three equations of equilibrium. */
  private static double[] term(PanelSection s, double p, double r, double load) {
    double k11 = s.a55() * p * p + s.a44() * r * r;
    double k12 = s.a55() * p;
    double k13 = s.a44() * r;
    double k22 = s.d11() * p * p + s.d66() * r * r + s.a55();
    double k23 = (s.d12() + s.d66()) * p * r;
    double k33 = s.d66() * p * p + s.d22() * r * r + s.a44();
    double det = k22 * k33 - k23 * k23;
    double fx = (k23 * k13 - k33 * k12) / det;
    double fy = (k23 * k12 - k22 * k13) / det;
    double w = load / (k11 + k12 * fx + k13 * fy);
    return new double[] {w, fx * w, fy * w};
  }

  /**
   * Thin isotropic plate, sides x = 0 and x = a simply supported, the others (at distance b) free,
   * even pressure: Levy's single series (S. P. Timoshenko, S. Woinowsky-Krieger, <em>Theory of
   * Plates and Shells</em>, 2nd ed., article 48). {@code y} is measured from the middle.
   */
  static double levySimpleFree(
      double d, double nu, double a, double b, double q, double x, double y, int terms) {
    double w = 0;
    for (int m = 1; m <= terms; m += 2) {
      double alpha = m * Math.PI / a;
      double p = 4 * q / (m * Math.PI * d * Math.pow(alpha, 4));
      double t = alpha * b / 2;
      double c = Math.cosh(t);
      double s = Math.sinh(t);
      // My = 0 and Vy = 0 at the free sides.
      double m1 = (1 - nu) * c;
      double m2 = 2 * c + (1 - nu) * t * s;
      double v1 = -(1 - nu) * s;
      double v2 = (1 + nu) * s - (1 - nu) * t * c;
      double det = m1 * v2 - m2 * v1;
      double first = nu * p * v2 / det;
      double second = -nu * p * v1 / det;
      double shape = p + first * Math.cosh(alpha * y) + second * alpha * y * Math.sinh(alpha * y);
      w += shape * Math.sin(alpha * x);
    }
    return w;
  }
}
