package org.stoutwork.report.file.frame;

import java.util.Map;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes panels, their ties and their loads. */
final class PanelOut {

  private PanelOut() {}

  static void panels(JsonOut out, Map<String, PanelEntry> panels) {
    if (!panels.isEmpty()) {
      out.object("panels", o -> panels.forEach((n, panel) -> o.object(n, v -> panel(v, panel))));
    }
  }

  private static void panel(JsonOut out, PanelEntry panel) {
    out.numbers("origin", panel.origin().toArray());
    out.numbers("along", panel.along().toArray()).numbers("across", panel.across().toArray());
    out.put("length", panel.length()).put("width", panel.width());
    out.put("thickness", panel.thickness());
    PanelEntry.Constants constants = panel.constants();
    out.put("E1", constants.e1()).put("E2", constants.e2());
    out.put("G12", constants.g12()).put("G13", constants.g13()).put("G23", constants.g23());
    out.put("nu12", constants.nu12()).put("density_kg_m3", constants.density());
    panel.mesh().ifPresent(mesh -> out.numbers("mesh", mesh.along(), mesh.across()));
    if (panel.thin()) {
      out.put("thin", true);
    }
    if (!panel.supports().isEmpty()) {
      out.objects("supports", panel.supports(), PanelOut::support);
    }
    if (!panel.report().isEmpty()) {
      out.numberLists(
          "report", panel.report().stream().map(p -> new double[] {p.x(), p.y()}).toList());
    }
  }

  private static void support(JsonOut out, PanelSupport support) {
    out.put("line", PanelSupportMapping.words(support.line()));
    PanelSupport.Hold hold = support.hold();
    if (hold instanceof PanelSupport.Hold.Elastic spring) {
      out.put("w", spring.stiffness());
    } else if (hold instanceof PanelSupport.Hold.Fixed) {
      out.put("w", "fixed");
    } else if (hold instanceof PanelSupport.Hold.CompressionOnly) {
      out.put("w", Words.COMPRESSION_ONLY);
    }
    out.put("slopeAlong", support.slopeAlongFixed() ? "fixed" : "free");
    out.put("slopeAcross", support.slopeAcrossFixed() ? "fixed" : "free");
  }

  static void tie(JsonOut out, PanelTie tie) {
    out.put("panel", tie.panel()).numbers("at", tie.at().x(), tie.at().y());
    out.put("node", tie.node());
    FrameWriter.links(out, tie.links());
  }

  static void load(JsonOut out, PanelLoad load) {
    if (load instanceof PanelLoad.Pressure pressure) {
      out.put("type", "panel-pressure").put("panel", pressure.panel()).put("q", pressure.q());
    } else if (load instanceof PanelLoad.Patch patch) {
      out.put("type", "panel-patch").put("panel", patch.panel());
      out.numbers("at", patch.at().x(), patch.at().y());
      out.numbers("size", patch.sizeAlong(), patch.sizeAcross()).put("force", patch.force());
    }
  }
}
