package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Map;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Range;

/** Loads on panels. */
final class PanelLoadMapping {

  private static final double FLUSH = 1e-9;

  private PanelLoadMapping() {}

  static Got<PanelLoad> pressure(Fields fields, Names names) {
    Got<String> panel = fields.scalar("panel", names.panel()).required();
    Got<Double> q = fields.number("q", Range.ANY).required();
    return fields.build(() -> new PanelLoad.Pressure(panel.get(), q.get()));
  }

  static Got<PanelLoad> patch(Fields fields, Names names, Map<String, PanelEntry> panels) {
    Got<String> name = fields.scalar("panel", names.panel()).required();
    Got<PanelEntry.Point> at = Points.required(fields, "at");
    Got<List<Double>> size = fields.numbers("size", 2, Range.NOT_NEGATIVE).required();
    Got<Double> force = fields.number("force", Range.ANY).required();
    PanelEntry panel = panels.get(name.orElse(""));
    if (panel != null && at.isThere() && size.isThere()) {
      refuseBeyond(fields, panel, at.get(), size.get());
    }
    return fields.build(
        () ->
            new PanelLoad.Patch(
                name.get(), at.get(), size.get().get(0), size.get().get(1), force.get()));
  }

  private static void refuseBeyond(
      Fields fields, PanelEntry panel, PanelEntry.Point at, List<Double> size) {
    // A patch flush with an edge may pass it by a rounding error.
    double halfX = size.get(0) / 2 * (1 - FLUSH);
    double halfY = size.get(1) / 2 * (1 - FLUSH);
    boolean inside =
        panel.contains(at.x() - halfX, at.y() - halfY)
            && panel.contains(at.x() + halfX, at.y() + halfY);
    if (!inside) {
      fields.fault(
          "at", "puts the patch beyond an edge", Points.onPanel(panel) + ", patch included", "");
    }
  }
}
