package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.PlateForces;
import org.stoutwork.analysis.model.PanelPoint;

/** Richardson's extrapolation from two meshes, whose error falls with the square of the size. */
final class PanelExtrapolation {
  private static final double THIRD = 1.0 / 3;

  private final PanelField coarse;
  private final PanelField fine;

  PanelExtrapolation(PanelField coarse, PanelField fine) {
    this.coarse = coarse;
    this.fine = fine;
  }

  private static double limit(double coarse, double fine) {
    return fine + THIRD * (fine - coarse);
  }

  List<PanelPointResult> report(List<PanelPoint> points) {
    List<PanelPointResult> results = new ArrayList<>();
    for (PanelPoint p : points) {
      double w = limit(coarse.wAt(p.x(), p.y()), fine.wAt(p.x(), p.y()));
      PlateForces f = fine.forcesAt(p.x(), p.y());
      PlateForces best = f.plus(THIRD, f).plus(-THIRD, coarse.forcesAt(p.x(), p.y()));
      results.add(new PanelPointResult(p.x(), p.y(), w, best));
    }
    return results;
  }

  /** The extreme among the nodes that both meshes have. */
  PanelExtreme extreme(boolean largest) {
    PanelExtreme best = null;
    for (int i = 0; i < coarse.countX(); i++) {
      for (int j = 0; j < coarse.countY(); j++) {
        double w = limit(coarse.w(i, j), fine.w(2 * i, 2 * j));
        boolean better = best == null || (largest ? w > best.value() : w < best.value());
        if (!Double.isNaN(w) && better) {
          best = new PanelExtreme(w, coarse.x(i), coarse.y(j));
        }
      }
    }
    return best;
  }

  double meshError(List<PanelPointResult> report) {
    PanelExtreme low = extreme(false);
    PanelExtreme high = extreme(true);
    double size = Math.max(Math.abs(low.value()), Math.abs(high.value()));
    double error =
        Math.max(
            Math.abs(low.value() - fine.wAt(low.x(), low.y())),
            Math.abs(high.value() - fine.wAt(high.x(), high.y())));
    for (PanelPointResult r : report) {
      error = Math.max(error, Math.abs(r.w() - fine.wAt(r.x(), r.y())));
    }
    return size == 0 ? 0 : error / size;
  }
}
