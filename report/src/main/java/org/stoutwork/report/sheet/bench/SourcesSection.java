package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;

/** Every source that the sheet rests on, and what the marks mean. */
final class SourcesSection {

  private SourcesSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "Sources and marks", "sources"));
    Table.Builder list =
        Table.of(
                Column.mm(12, "Name"),
                Column.share(2, "Document or ground"),
                Column.share(1, "Place"))
            .caption(
                "Sources of the inputs and of the workings printed here, the firmest mark first")
            .dense();
    for (Mark mark : Mark.values()) {
      boolean any = m.sources().entries().stream().anyMatch(e -> e.getKey().mark() == mark);
      String none = any ? "" : " None of the values printed here.";
      list.group(Shown.plain(mark.words()) + ": " + meaning(mark) + none);
      for (Map.Entry<Source, String> entry : m.sources().entries()) {
        if (entry.getKey().mark() == mark) {
          list.row(row(entry.getKey(), entry.getValue()));
        }
      }
    }
    out.add(list.build());
    return out;
  }

  private static List<Cell> row(Source source, String name) {
    String place = source.place().isBlank() ? "\u2013" : Shown.plain(source.place());
    return List.of(
        Cell.of("**" + name + "**"),
        Cell.of(Shown.plain(Shown.sentence(source.document()))),
        Cell.of(place));
  }

  private static String meaning(Mark mark) {
    return switch (mark) {
      case DERIVED -> "worked out from marked values by statics, elasticity or arithmetic.";
      case PUBLISHED -> "read in the named document.";
      case YOURS -> "entered by whoever described the bench, who answers for it.";
      case FROM_MEMORY ->
          "of the named document, but not read again when it was entered: look it up before relying"
              + " on it.";
      case COMMON_PRACTICE -> "what the trade does; no publication was found.";
      case PROJECT_DEFAULT ->
          "a choice of this program, nobody's standard; put your own in its place.";
    };
  }
}
