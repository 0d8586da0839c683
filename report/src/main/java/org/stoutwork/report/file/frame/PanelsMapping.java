package org.stoutwork.report.file.frame;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;

/**
 * The panels of a file.
 *
 * @param entries by name
 * @param known those that could be read, by name
 */
record PanelsMapping(Got<Map<String, PanelEntry>> entries, Map<String, PanelEntry> known) {

  static PanelsMapping read(Fields file, Names names) {
    Map<String, PanelEntry> known = new LinkedHashMap<>();
    Got<Map<String, PanelEntry>> entries =
        FrameMapping.orNone(
            file.entries(
                "panels",
                (name, value) -> {
                  Got<PanelEntry> panel = value.map(PanelMapping::read);
                  panel.ifThere(entry -> known.put(name, entry));
                  return panel;
                }));
    return new PanelsMapping(entries, known);
  }

  /** A panel that nothing holds would fall. */
  void refuseUnheld(Fields file, Got<List<PanelTie>> ties) {
    if (!ties.isThere()) {
      return;
    }
    known.forEach(
        (name, panel) -> {
          boolean tied = ties.get().stream().anyMatch(tie -> tie.panel().equals(name));
          if (panel.supports().isEmpty() && !tied) {
            file.fault(
                "panels",
                "leaves the panel `" + name + "` without supports and ties",
                "something must hold each panel",
                "");
          }
        });
  }
}
