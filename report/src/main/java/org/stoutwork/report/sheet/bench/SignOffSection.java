package org.stoutwork.report.sheet.bench;

import java.util.List;
import org.stoutwork.bench.People;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Revision;
import org.stoutwork.report.sheet.SignOff;
import org.stoutwork.report.sheet.Table;

/** Lines to sign on, the table of revisions, and where everything stands. */
final class SignOffSection {

  private static final int BLANK_REVISIONS = 2;

  private SignOffSection() {}

  static List<Block> of(Matter m) {
    People people = m.bench().people();
    Revision first =
        new Revision(people.revision(), people.date(), "", people.prepared(), people.checked());
    return List.of(
        new Block.PageBreak(),
        Heading.of(1, "Sign-off", "sign-off"),
        Paragraph.note(
            "Signed by hand, after reading. The program fills in no name, and a change of any input"
                + " (another fingerprint than "
                + Shown.plain(m.fingerprint())
                + ") clears all signatures."),
        SignOff.of(
            "Prepared",
            "Checked (not by the preparer)",
            "Approved for making",
            "Accepted after building (made as drawn)"),
        Revision.table(List.of(first), BLANK_REVISIONS),
        contents());
  }

  private static Table contents() {
    String[][] lines = {
      {"Drawing and list of parts", "drawing"},
      {"Joints", "joints-drawn"},
      {"All checks; what was not checked", "checks"},
      {"Shapes and diagrams", "shapes"},
      {"Workings of what governs", "workings"},
      {"Inputs and defaults", "inputs"},
      {"Model, assumptions, limits", "model"},
      {"Cautions in full; use and care", "cautions"},
      {"Sources and marks", "sources"},
    };
    Table.Builder table =
        Table.of(
                Column.share(1, "Where to find"),
                Column.mm(13, "Page").right(),
                Column.mm(6, ""),
                Column.share(1, ""),
                Column.mm(13, "Page").right())
            .dense();
    int half = (lines.length + 1) / 2;
    for (int i = 0; i < half; i++) {
      String[] left = lines[i];
      boolean more = i + half < lines.length;
      String[] right = more ? lines[i + half] : left;
      table.row(title(left), page(left), "", more ? title(right) : "", more ? page(right) : "");
    }
    return table.build();
  }

  private static String title(String[] line) {
    return "{section:" + line[1] + "}\u2002" + line[0];
  }

  private static String page(String[] line) {
    return "{page:" + line[1] + "}";
  }
}
