package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stoutwork.report.sheet.Block;
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
    Table.Builder marks =
        Table.of(Column.mm(48, "Mark"), Column.share(1, "What it says of a value"))
            .caption("Marks, the firmest first");
    for (Mark mark : Mark.values()) {
      marks.row("**" + Shown.plain(mark.words()) + "**", meaning(mark));
    }
    out.add(marks.build());
    Table.Builder list =
        Table.of(
                Column.mm(12, "Name"),
                Column.share(2, "Document or ground"),
                Column.share(1, "Place"),
                Column.mm(33, "Mark"))
            .caption("Sources of the inputs and of the workings printed here")
            .dense();
    for (Map.Entry<Source, String> entry : m.sources().entries()) {
      Source s = entry.getKey();
      list.row(
          "**" + entry.getValue() + "**",
          Shown.plain(Shown.sentence(s.document())),
          s.place().isBlank() ? "\u2013" : Shown.plain(s.place()),
          Shown.plain(s.mark().words()));
    }
    out.add(list.build());
    return out;
  }

  private static String meaning(Mark mark) {
    return switch (mark) {
      case DERIVED -> "Worked out from marked values by statics, elasticity or arithmetic.";
      case PUBLISHED -> "Read in the named document.";
      case YOURS -> "Entered by whoever described the bench, who answers for it.";
      case FROM_MEMORY ->
          "Of the named document, but not read again when it was entered: look it up before relying"
              + " on it.";
      case COMMON_PRACTICE -> "What the trade does; no publication was found.";
      case PROJECT_DEFAULT ->
          "A choice of this program, nobody's standard; put your own in its place.";
    };
  }
}
