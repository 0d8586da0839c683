package org.stoutwork.report.file.frame;

import java.util.Map;
import org.stoutwork.analysis.solve.PanelExtreme;
import org.stoutwork.analysis.solve.PanelPointResult;
import org.stoutwork.analysis.solve.PanelReaction;
import org.stoutwork.analysis.solve.PanelResult;
import org.stoutwork.analysis.solve.PanelTieForce;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes the results of panels. */
final class PanelResultOut {

  private PanelResultOut() {}

  static void panels(JsonOut out, Map<String, PanelResult> panels) {
    if (!panels.isEmpty()) {
      out.object("panels", o -> panels.forEach((name, p) -> o.object(name, v -> panel(v, p))));
    }
  }

  private static void panel(JsonOut out, PanelResult panel) {
    out.objects("report", panel.report(), PanelResultOut::point);
    out.object("wMin", o -> extreme(o, panel.wMin()));
    out.object("wMax", o -> extreme(o, panel.wMax()));
    out.put("meshError", panel.meshError());
    out.objects("supports", panel.reactions(), PanelResultOut::support);
    out.objects("ties", panel.ties(), PanelResultOut::tie);
    out.put("equilibriumError", panel.equilibriumError()).put("residual", panel.residual());
  }

  private static void point(JsonOut out, PanelPointResult point) {
    out.put("x", point.x()).put("y", point.y()).put("w", point.w());
    out.put("Mx", point.forces().mx()).put("My", point.forces().my());
    out.put("Mxy", point.forces().mxy());
    out.put("Qx", point.forces().qx()).put("Qy", point.forces().qy());
  }

  private static void extreme(JsonOut out, PanelExtreme extreme) {
    out.put("value", extreme.value()).put("x", extreme.x()).put("y", extreme.y());
  }

  private static void support(JsonOut out, PanelReaction reaction) {
    out.put("line", PanelModels.line(reaction.support().line()));
    out.put("force", reaction.force()).put("openLength", reaction.openLength());
  }

  private static void tie(JsonOut out, PanelTieForce tie) {
    out.put("node", tie.tie().node()).put("direction", Words.of(tie.direction()));
    out.put("force", tie.force()).put("open", tie.open());
  }
}
