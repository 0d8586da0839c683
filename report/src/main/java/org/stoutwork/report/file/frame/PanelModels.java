package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.report.file.tree.ShortNumber;

/** Turns the panels of a file into panels that can be solved. */
public final class PanelModels {

  private PanelModels() {}

  /**
   * The panels of a file.
   *
   * @param file what the file says
   * @return the panels in file order, with their supports and ties
   */
  public static List<Panel> panels(FrameFile file) {
    List<Panel> panels = new ArrayList<>();
    file.panels().forEach((name, entry) -> panels.add(panel(name, entry, file.panelTies())));
    return panels;
  }

  /**
   * All loads of a file.
   *
   * @param file what the file says
   * @return loads on nodes, members and panels
   */
  public static LoadCase loads(FrameFile file) {
    List<Load> loads = new ArrayList<>(file.loads().loads());
    file.panelLoads().forEach(load -> loads.add(load(load)));
    return new LoadCase(file.loads().name(), loads);
  }

  private static Panel panel(String name, PanelEntry entry, List<PanelTie> ties) {
    PanelEntry.Constants c = entry.constants();
    PanelMaterial material =
        new PanelMaterial(c.e1(), c.e2(), c.g12(), c.g13(), c.g23(), c.nu12(), c.density());
    PanelBuilder builder =
        Panel.builder(name, entry.length(), entry.width(), entry.thickness())
            .place(new PanelPlace(entry.origin(), entry.along(), entry.across()))
            .material(material)
            .thin(entry.thin());
    entry.mesh().ifPresent(mesh -> builder.mesh(new PanelMesh.Even(mesh.along(), mesh.across())));
    entry.supports().forEach(support -> builder.support(support(support)));
    entry.report().forEach(point -> builder.report(point.x(), point.y()));
    ties.stream()
        .filter(tie -> tie.panel().equals(name))
        .forEach(tie -> builder.tie(tie.at().x(), tie.at().y(), tie.node(), tie.links()));
    return builder.build();
  }

  private static org.stoutwork.analysis.model.PanelSupport support(PanelSupport support) {
    PanelLine line =
        support.line().constantX()
            ? PanelLine.x(support.line().at())
            : PanelLine.y(support.line().at());
    return new org.stoutwork.analysis.model.PanelSupport(
        line, hold(support.hold()), support.slopeAlongFixed(), support.slopeAcrossFixed());
  }

  private static Optional<Link> hold(PanelSupport.Hold hold) {
    if (hold instanceof PanelSupport.Hold.Elastic spring) {
      return Optional.of(Link.elastic(spring.stiffness()));
    }
    if (hold instanceof PanelSupport.Hold.CompressionOnly) {
      return Optional.of(Link.CONTACT);
    }
    return hold instanceof PanelSupport.Hold.Fixed ? Optional.of(Link.RIGID) : Optional.empty();
  }

  private static Load load(PanelLoad load) {
    if (load instanceof PanelLoad.Pressure pressure) {
      return org.stoutwork.analysis.model.PanelLoad.pressure(pressure.panel(), pressure.q());
    }
    PanelLoad.Patch patch = (PanelLoad.Patch) load;
    return org.stoutwork.analysis.model.PanelLoad.patch(
        patch.panel(),
        patch.at().x(),
        patch.at().y(),
        patch.sizeAlong(),
        patch.sizeAcross(),
        patch.force());
  }

  static String line(PanelLine line) {
    return (line.across() ? "x=" : "y=") + ShortNumber.of(line.at());
  }
}
