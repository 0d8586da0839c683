package org.stoutwork.analysis.model;

import java.util.List;

/**
 * A flat rectangular orthotropic plate: where it lies, what it resists, how it is held.
 *
 * <p>x runs along from the origin corner (left, front), y across, and the normal is along × across;
 * w and all loads refer to it.
 *
 * @param name unique among panels
 * @param place where its middle surface lies
 * @param length along, mm
 * @param width across, mm
 * @param thickness h, mm; turns moments into stresses
 * @param section what it resists, away from its zones
 * @param zones parts with another section; a later zone covers an earlier one
 * @param openings parts without material
 * @param mesh how finely to divide it
 * @param thin true leaves out transverse shear deformation
 * @param supports lines held by the ground
 * @param ties places joined to nodes of a frame
 * @param report places whose deflection and moments are wanted
 */
public record Panel(
    String name,
    PanelPlace place,
    double length,
    double width,
    double thickness,
    PanelSection section,
    List<PanelZone> zones,
    List<PanelArea> openings,
    PanelMesh mesh,
    boolean thin,
    List<PanelSupport> supports,
    List<PanelTie> ties,
    List<PanelPoint> report) {

  /**
   * Copies the lists and checks that everything lies on the panel.
   *
   * @throws IllegalArgumentException for a size not above zero or something outside the panel
   */
  public Panel {
    Check.name("panel", name);
    Check.positive("length of panel '" + name + "'", length, "mm");
    Check.positive("width of panel '" + name + "'", width, "mm");
    Check.positive("thickness of panel '" + name + "'", thickness, "mm");
    zones = List.copyOf(zones);
    openings = List.copyOf(openings);
    supports = List.copyOf(supports);
    ties = List.copyOf(ties);
    report = List.copyOf(report);
    for (PanelZone zone : zones) {
      inside(name, length, width, zone.area());
    }
    for (PanelArea opening : openings) {
      inside(name, length, width, opening);
    }
    for (PanelSupport support : supports) {
      PanelLine line = support.line();
      double limit = line.across() ? length : width;
      double run = line.across() ? width : length;
      if (line.at() > limit
          || line.from() >= run
          || (!Double.isInfinite(line.to()) && line.to() > run)) {
        throw new IllegalArgumentException(
            "the support on "
                + line.inWords()
                + " leaves panel '"
                + name
                + "', which is "
                + length
                + " by "
                + width
                + " mm");
      }
    }
    for (PanelTie tie : ties) {
      inside(name, length, width, tie.at());
    }
    for (PanelPoint point : report) {
      inside(name, length, width, point);
    }
  }

  private static void inside(String name, double length, double width, PanelPoint at) {
    if (at.x() < 0 || at.x() > length || at.y() < 0 || at.y() > width) {
      throw new IllegalArgumentException(
          "the place ("
              + at.x()
              + ", "
              + at.y()
              + ") is not on panel '"
              + name
              + "', which is "
              + length
              + " by "
              + width
              + " mm");
    }
  }

  private static void inside(String name, double length, double width, PanelArea area) {
    inside(name, length, width, new PanelPoint(area.x0(), area.y0()));
    inside(name, length, width, new PanelPoint(area.x1(), area.y1()));
  }

  /** Begins a panel that lies flat with its corner at the origin. */
  public static PanelBuilder builder(String name, double length, double width, double thickness) {
    return new PanelBuilder(name, length, width, thickness);
  }

  /** A builder that starts from this panel. */
  public PanelBuilder toBuilder() {
    return new PanelBuilder(this);
  }

  /** True when the place has material under it (sides of openings count as material). */
  public boolean hasMaterial(double x, double y) {
    for (PanelArea o : openings) {
      if (x > o.x0() && x < o.x1() && y > o.y0() && y < o.y1()) {
        return false;
      }
    }
    return x >= 0 && x <= length && y >= 0 && y <= width;
  }
}
