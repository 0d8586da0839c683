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

  private static final int BLANK_REVISIONS = 3;

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
    Table.Builder table =
        Table.of(Column.share(1, "Where to find"), Column.mm(16, "Page").right())
            .caption("Contents")
            .dense();
    String[][] lines = {
      {"Drawing with sizes and the list of parts", "drawing"},
      {"All checks, with what was not checked and why", "checks"},
      {"Deflected shapes, racking, moment and shear", "shapes"},
      {"Workings of what governs, line by line", "workings"},
      {"Inputs: joints, woods, actions, combinations, masses, defaults", "inputs"},
      {"Model, assumptions and what is not covered", "model"},
      {"Cautions in full; use and care", "cautions"},
      {"Sources and marks", "sources"},
    };
    for (String[] line : lines) {
      table.row("{section:" + line[1] + "}\u2002" + line[0], "{page:" + line[1] + "}");
    }
    return table.build();
  }
}
