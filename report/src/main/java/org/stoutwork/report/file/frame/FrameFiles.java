package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelPoint;
import org.stoutwork.analysis.model.PanelSection;

/** Makes a frame file of a model, so that anyone can solve the model again with other means. */
public final class FrameFiles {

  private static final double ALIKE = 1e-9;

  private FrameFiles() {}

  /**
   * Makes a frame file.
   *
   * @param title what the structure is
   * @param model the frame
   * @param panels the panels tied to it
   * @param loads the loads on both
   * @param analyses what is to be worked out
   * @return the file, to be written by {@link FrameWriter}
   * @throws IllegalArgumentException for what the format cannot say: zones and openings of panels,
   *     supports over part of a panel, line loads on panels, and sections whose stretching does not
   *     follow from their bending as in one solid layer
   */
  public static FrameFile of(
      String title,
      FrameModel model,
      Collection<Panel> panels,
      LoadCase loads,
      Set<Analysis> analyses) {
    Map<String, PanelEntry> entries = new LinkedHashMap<>();
    List<PanelTie> ties = new ArrayList<>();
    for (Panel panel : panels) {
      entries.put(panel.name(), entry(panel));
      panel
          .ties()
          .forEach(t -> ties.add(new PanelTie(panel.name(), point(t.at()), t.node(), t.links())));
    }
    List<Load> onFrame = new ArrayList<>();
    List<PanelLoad> onPanels = new ArrayList<>();
    for (Load load : loads.loads()) {
      if (load instanceof org.stoutwork.analysis.model.PanelLoad own) {
        onPanels.add(load(own));
      } else {
        onFrame.add(load);
      }
    }
    LoadCase frameLoads = new LoadCase(loads.name(), onFrame);
    return new FrameFile(title, model, frameLoads, entries, ties, onPanels, analyses);
  }

  private static PanelEntry entry(Panel panel) {
    if (!panel.zones().isEmpty() || !panel.openings().isEmpty()) {
      throw cannot("panel '" + panel.name() + "' has zones or openings");
    }
    Optional<PanelEntry.Mesh> mesh =
        panel.mesh() instanceof PanelMesh.Even even
            ? Optional.of(new PanelEntry.Mesh(even.nx(), even.ny()))
            : Optional.empty();
    return new PanelEntry(
        panel.place().origin(),
        panel.place().along(),
        panel.place().across(),
        panel.length(),
        panel.width(),
        panel.thickness(),
        constants(panel.name(), panel.section(), panel.thickness()),
        mesh,
        panel.thin(),
        panel.supports().stream().map(FrameFiles::support).toList(),
        panel.report().stream().map(FrameFiles::point).toList());
  }

  /** The solid layer of the same thickness that resists the same: D = E h³ / 12 (1 − ν12 ν21). */
  private static PanelEntry.Constants constants(String panel, PanelSection s, double h) {
    double stretch = 12 / (h * h);
    boolean solid =
        isLike(s.c11(), stretch * s.d11())
            && isLike(s.c22(), stretch * s.d22())
            && isLike(s.c12(), stretch * s.d12())
            && isLike(s.c66(), stretch * s.d66());
    if (!solid) {
      throw cannot("panel '" + panel + "' stretches unlike one solid layer");
    }
    double nu12 = s.d12() / s.d22();
    double bend = 12 * (1 - nu12 * s.d12() / s.d11()) / (h * h * h);
    double shear = 1 / (PanelSection.KAPPA * h);
    return new PanelEntry.Constants(
        bend * s.d11(),
        bend * s.d22(),
        12 * s.d66() / (h * h * h),
        shear * s.a55(),
        shear * s.a44(),
        nu12,
        1000 * s.mass() / h);
  }

  private static boolean isLike(double a, double b) {
    return Math.abs(a - b) <= ALIKE * Math.max(Math.abs(a), Math.abs(b));
  }

  private static PanelSupport support(org.stoutwork.analysis.model.PanelSupport support) {
    PanelLine line = support.line();
    if (line.from() > 0 || Double.isFinite(line.to())) {
      throw cannot("the support on " + line.inWords() + " is shorter than its panel");
    }
    return new PanelSupport(
        new PanelSupport.Line(line.across(), line.at()),
        support.w().map(FrameFiles::hold).orElse(new PanelSupport.Hold.Free()),
        support.slopeAlong(),
        support.slopeAcross());
  }

  private static PanelSupport.Hold hold(Link link) {
    if (link instanceof Link.Elastic spring) {
      return new PanelSupport.Hold.Elastic(spring.stiffness());
    }
    if (link instanceof Link.ElasticContact) {
      throw cannot("a line holds its panel by springs that only press");
    }
    return link instanceof Link.Contact
        ? new PanelSupport.Hold.CompressionOnly()
        : new PanelSupport.Hold.Fixed();
  }

  private static PanelLoad load(org.stoutwork.analysis.model.PanelLoad load) {
    if (load instanceof org.stoutwork.analysis.model.PanelLoad.Pressure pressure) {
      return new PanelLoad.Pressure(pressure.panel(), pressure.q());
    }
    if (load instanceof org.stoutwork.analysis.model.PanelLoad.Patch patch) {
      return new PanelLoad.Patch(
          patch.panel(), point(patch.at()), patch.sizeX(), patch.sizeY(), patch.force());
    }
    throw cannot("panel '" + load.panel() + "' carries a line load");
  }

  private static PanelEntry.Point point(PanelPoint at) {
    return new PanelEntry.Point(at.x(), at.y());
  }

  private static IllegalArgumentException cannot(String what) {
    return new IllegalArgumentException(what + "; a frame file cannot say so");
  }
}
