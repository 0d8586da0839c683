package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Tie;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;

/** The outermost map of a frame file. */
final class FrameMapping {

  /** The only system of units there is; files may state it. */
  static final String UNITS = "N, mm, MPa";

  private FrameMapping() {}

  static Got<FrameFile> read(Fields file) {
    file.ignore("expected");
    file.wholeNumber("schemaVersion", FrameFile.SCHEMA_VERSION, FrameFile.SCHEMA_VERSION)
        .optional();
    file.choice("units", Map.of(UNITS, UNITS)).optional();
    Got<String> title = file.text("title").optional().map(given -> given.orElse(""));
    Names names = Names.in(file);
    StructureMapping structure = StructureMapping.read(file, names);
    PanelsMapping panels = PanelsMapping.read(file, names);
    Got<List<LoadMapping.Entry>> loads =
        orEmpty(
            file.list(
                "loads",
                value ->
                    value.map(
                        load ->
                            LoadMapping.read(load, names, structure.lengths(), panels.known()))));
    Got<Set<Analysis>> analyses = analyses(file);
    TiesMapping ties = TiesMapping.read(file, names, panels.known());
    panels.refuseUnheld(file, ties.panelTies());
    return file.build(
        () ->
            new FrameFile(
                title.get(),
                model(structure, ties.nodeTies().get()),
                new LoadCase("loads", frameLoads(loads.get())),
                panels.entries().get(),
                ties.panelTies().get(),
                panelLoads(loads.get()),
                analyses.get()));
  }

  private static Got<Set<Analysis>> analyses(Fields file) {
    Field<List<Analysis>> field =
        file.scalars("analyses", Kinds.choice(Analysis.class))
            .where(list -> !list.isEmpty(), "a list of at least one analysis");
    return field
        .orDefault(List.of(Analysis.STATIC), "a file that asks for nothing asks for the statics")
        .map(EnumSet::copyOf);
  }

  private static FrameModel model(StructureMapping structure, Map<String, Tie> ties) {
    return new FrameModel(
        structure.nodes().get(),
        structure.materials().get(),
        structure.sections().get(),
        structure.members().get(),
        structure.supports().get(),
        ties,
        structure.masses().get());
  }

  private static List<Load> frameLoads(List<LoadMapping.Entry> entries) {
    List<Load> loads = new ArrayList<>();
    entries.forEach(entry -> entry.frame().ifPresent(loads::add));
    return loads;
  }

  private static List<PanelLoad> panelLoads(List<LoadMapping.Entry> entries) {
    List<PanelLoad> loads = new ArrayList<>();
    entries.forEach(entry -> entry.panel().ifPresent(loads::add));
    return loads;
  }

  static <T> Got<List<T>> orEmpty(Field<List<T>> field) {
    return field.optional().map((Optional<List<T>> given) -> given.orElse(List.of()));
  }

  static <T> Got<Map<String, T>> orNone(Field<Map<String, T>> field) {
    return field.optional().map((Optional<Map<String, T>> given) -> given.orElse(Map.of()));
  }
}
