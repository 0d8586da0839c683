package org.stoutwork.analysis.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Collects the pieces of a {@link Panel}. */
public final class PanelBuilder {
  private final String name;
  private double length;
  private double width;
  private double thickness;
  private PanelPlace place = PanelPlace.flat(Vec3.ZERO);
  private PanelSection section;
  private PanelMesh mesh = PanelMesh.AUTO;
  private boolean thin;
  private final List<PanelZone> zones = new ArrayList<>();
  private final List<PanelArea> openings = new ArrayList<>();
  private final List<PanelSupport> supports = new ArrayList<>();
  private final List<PanelTie> ties = new ArrayList<>();
  private final List<PanelPoint> report = new ArrayList<>();

  PanelBuilder(String name, double length, double width, double thickness) {
    this.name = name;
    this.length = length;
    this.width = width;
    this.thickness = thickness;
  }

  PanelBuilder(Panel panel) {
    this(panel.name(), panel.length(), panel.width(), panel.thickness());
    place = panel.place();
    section = panel.section();
    mesh = panel.mesh();
    thin = panel.thin();
    zones.addAll(panel.zones());
    openings.addAll(panel.openings());
    supports.addAll(panel.supports());
    ties.addAll(panel.ties());
    report.addAll(panel.report());
  }

  /** Where it lies. */
  public PanelBuilder place(PanelPlace where) {
    place = where;
    return this;
  }

  /** Other sides, mm. */
  public PanelBuilder size(double newLength, double newWidth) {
    length = newLength;
    width = newWidth;
    return this;
  }

  /** One solid layer of the panel's thickness, axis 1 of the material along x. */
  public PanelBuilder material(PanelMaterial material) {
    return section(PanelSection.solid(material, thickness));
  }

  /** What it resists, given directly. */
  public PanelBuilder section(PanelSection given) {
    section = given;
    return this;
  }

  /** A part with another section. */
  public PanelBuilder zone(double x0, double y0, double x1, double y1, PanelSection other) {
    zones.add(new PanelZone(new PanelArea(x0, y0, x1, y1), other));
    return this;
  }

  /** A part without material. */
  public PanelBuilder opening(double x0, double y0, double x1, double y1) {
    openings.add(new PanelArea(x0, y0, x1, y1));
    return this;
  }

  /** How finely to divide it. */
  public PanelBuilder mesh(PanelMesh chosen) {
    mesh = chosen;
    return this;
  }

  /** Leaves out transverse shear deformation. */
  public PanelBuilder thin(boolean leaveOutShear) {
    thin = leaveOutShear;
    return this;
  }

  /** A line held by the ground. */
  public PanelBuilder support(PanelSupport support) {
    supports.add(support);
    return this;
  }

  /** Forgets all supports given so far. */
  public PanelBuilder withoutSupports() {
    supports.clear();
    return this;
  }

  /** A place joined to a node of the frame. */
  public PanelBuilder tie(double x, double y, String node, Map<Direction, Link> links) {
    ties.add(new PanelTie(new PanelPoint(x, y), node, links));
    return this;
  }

  /** A place whose results are wanted. */
  public PanelBuilder report(double x, double y) {
    report.add(new PanelPoint(x, y));
    return this;
  }

  /**
   * Checks and makes the panel.
   *
   * @throws IllegalArgumentException when no section or material was given, or as {@link Panel}
   */
  public Panel build() {
    if (section == null) {
      throw new IllegalArgumentException("panel '" + name + "' needs a material or a section");
    }
    return new Panel(
        name, place, length, width, thickness, section, zones, openings, mesh, thin, supports, ties,
        report);
  }
}
