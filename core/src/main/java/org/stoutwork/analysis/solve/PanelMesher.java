package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelArea;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelPoint;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.PanelSupport;
import org.stoutwork.analysis.model.PanelTie;
import org.stoutwork.analysis.model.PanelZone;

/**
 * Chooses the lines that divide a panel. Lines run through everything that must have one (edges,
 * supports, ties, zones, openings) and, in an automatic mesh, through the edges of loads and the
 * reported places too. An automatic mesh is finer near edges, where a plate with shear deformation
 * has a boundary layer of the width √(D66/A), and near small loads and ties.
 */
final class PanelMesher {
  private static final double SMALLEST = 1.0 / 8;

  private final Panel panel;
  private final List<PanelLoad> loads;

  private PanelMesher(Panel panel, List<PanelLoad> loads) {
    this.panel = panel;
    this.loads = loads;
  }

  /** The coarser of the two grids and the one with half its size. */
  static List<PanelGrid> pair(Panel panel, List<PanelLoad> loads) {
    PanelMesher mesher = new PanelMesher(panel, loads);
    PanelMeshLines x = mesher.lines(true);
    PanelMeshLines y = mesher.lines(false);
    PanelGrid coarse = new PanelGrid(panel, x.divide(1), y.divide(1));
    return List.of(coarse, coarse.with(x.divide(2), y.divide(2)));
  }

  private PanelMeshLines lines(boolean alongX) {
    double length = alongX ? panel.length() : panel.width();
    if (panel.mesh() instanceof PanelMesh.Even even) {
      PanelMeshLines lines = new PanelMeshLines(length, length / (alongX ? even.nx() : even.ny()));
      addObligatory(lines, alongX);
      return lines;
    }
    if (panel.mesh() instanceof PanelMesh.Lines given) {
      PanelMeshLines lines = new PanelMeshLines(length, length);
      (alongX ? given.along() : given.across())
          .stream().filter(at -> at < length).forEach(lines::must);
      addObligatory(lines, alongX);
      return lines;
    }
    int divisions = ((PanelMesh.Auto) panel.mesh()).divisions();
    PanelMeshLines lines = new PanelMeshLines(length, usualSize(alongX, divisions));
    addObligatory(lines, alongX);
    addWishes(lines, alongX);
    addLayers(lines, alongX);
    return lines;
  }

  /** Cells are longer in the stiffer direction, as far as √2 each way. */
  private double usualSize(boolean alongX, int divisions) {
    PanelSection s = panel.section();
    double stretch = Math.min(2, Math.max(0.5, Math.pow(s.d11() / s.d22(), 0.25)));
    double fx = Math.sqrt(stretch);
    double even = Math.max(panel.length() / fx, panel.width() * fx) / divisions;
    double least = Math.max(4, divisions / 3.0);
    return alongX
        ? Math.min(even * fx, panel.length() / least)
        : Math.min(even / fx, panel.width() / least);
  }

  private void addObligatory(PanelMeshLines lines, boolean alongX) {
    for (PanelSupport support : panel.supports()) {
      PanelLine line = support.line();
      if (line.across() == alongX) {
        lines.must(line.at());
      } else {
        lines.must(line.from());
        lines.must(Math.min(line.to(), lines.length()));
      }
    }
    for (PanelTie tie : panel.ties()) {
      lines.must(alongX ? tie.at().x() : tie.at().y());
    }
    List<PanelArea> areas = new ArrayList<>(panel.openings());
    for (PanelZone zone : panel.zones()) {
      areas.add(zone.area());
    }
    for (PanelArea area : areas) {
      lines.must(alongX ? area.x0() : area.y0());
      lines.must(alongX ? area.x1() : area.y1());
    }
  }

  private void addWishes(PanelMeshLines lines, boolean alongX) {
    for (PanelPoint point : panel.report()) {
      lines.wish(alongX ? point.x() : point.y());
    }
    for (PanelTie tie : panel.ties()) {
      lines.finerAt(alongX ? tie.at().x() : tie.at().y(), lines.usual() / 3);
    }
    for (PanelLoad load : loads) {
      if (load instanceof PanelLoad.Patch patch) {
        double middle = alongX ? patch.at().x() : patch.at().y();
        double size = alongX ? patch.sizeX() : patch.sizeY();
        lines.wish(middle - size / 2);
        lines.wish(middle + size / 2);
        double fine = Math.max(size / 4, SMALLEST * lines.usual());
        lines.finerAt(middle - size / 2, fine);
        lines.finerAt(middle + size / 2, fine);
      } else if (load instanceof PanelLoad.OnLine onLine && onLine.line().across() == alongX) {
        lines.wish(onLine.line().at());
      }
    }
  }

  private void addLayers(PanelMeshLines lines, boolean alongX) {
    if (panel.thin()) {
      return;
    }
    PanelSection s = panel.section();
    double layer = Math.sqrt(s.d66() / (alongX ? s.a44() : s.a55()));
    double fine = Math.max(layer / 2, SMALLEST * lines.usual());
    lines.finerAt(0, fine);
    lines.finerAt(lines.length(), fine);
    for (PanelSupport support : panel.supports()) {
      if (support.line().across() == alongX) {
        lines.finerAt(support.line().at(), fine);
      }
    }
  }
}
