package org.stoutwork.report.file.frame;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

/**
 * What a frame file says. Units are N, mm, MPa, rad; masses kg, densities kg/m³.
 *
 * @param title what the structure is; may be empty
 * @param model nodes, members, supports, masses and ties between nodes
 * @param loads the loads on nodes and members, and self-weight
 * @param panels panels by name
 * @param panelTies what joins panels to nodes
 * @param panelLoads the loads on panels
 * @param analyses what is to be worked out; at least one
 */
public record FrameFile(
    String title,
    FrameModel model,
    LoadCase loads,
    Map<String, PanelEntry> panels,
    List<PanelTie> panelTies,
    List<PanelLoad> panelLoads,
    Set<Analysis> analyses) {

  /** The number that files carry as {@code schemaVersion}. */
  public static final int SCHEMA_VERSION = 1;

  /** Copies the collections, keeping their order. */
  public FrameFile {
    panels = Collections.unmodifiableMap(new LinkedHashMap<>(panels));
    panelTies = List.copyOf(panelTies);
    panelLoads = List.copyOf(panelLoads);
    if (analyses.isEmpty()) {
      throw new IllegalArgumentException("no analysis is asked for; name at least one");
    }
    analyses = Collections.unmodifiableSet(EnumSet.copyOf(analyses));
  }
}
