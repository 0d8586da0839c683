package org.stoutwork.report.sheet;

import java.util.List;
import org.stoutwork.report.drawing.RichText;

/**
 * A line of the revision table. Plain text, not markup.
 *
 * @param letter of the revision
 * @param date in ISO form
 * @param change what changed
 * @param by who changed it; may be empty
 * @param checkedBy who checked it; may be empty
 */
public record Revision(String letter, String date, String change, String by, String checkedBy) {

  /**
   * The table of revisions.
   *
   * @param revisions in order
   * @param blank rows left to fill in by hand, at least 0
   */
  public static Table table(List<Revision> revisions, int blank) {
    Table.Builder table =
        Table.of(
                Column.mm(18, "Revision"),
                Column.mm(24, "Date"),
                Column.share(1, "What changed"),
                Column.mm(26, "By"),
                Column.mm(26, "Checked by"))
            .caption("Revisions; a change of any input clears the signatures");
    for (Revision revision : revisions) {
      table.row(revision.cells());
    }
    for (int i = 0; i < blank; i++) {
      table.row("", "", "", "", "");
    }
    return table.build();
  }

  private List<Cell> cells() {
    return java.util.stream.Stream.of(letter, date, change, by, checkedBy)
        .<Cell>map(text -> new Cell.Text(RichText.plain(text)))
        .toList();
  }
}
