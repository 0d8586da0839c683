package org.stoutwork.report.sheet.bench;

import org.stoutwork.quantity.Writing;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.MaterialLine;
import org.stoutwork.source.Source;
import org.stoutwork.working.Line;

/** How each value of each wood comes about, a line of its working a row. */
final class StrengthsTable {

  private StrengthsTable() {}

  static Table of(Matter m) {
    Table.Builder table =
        Table.of(Column.share(3, "Line"), Column.share(1.6, "Meaning"), Column.mm(33, "Source"))
            .caption("How the values of table {table:woods} come about")
            .anchor("strengths")
            .dense();
    for (MaterialLine wood : m.result().materials()) {
      for (MaterialLine.Value value : wood.values()) {
        table.group(
            Shown.plain(wood.name()) + ": " + Shown.plain(value.meaning()) + ", " + value.symbol());
        value.working().lines().forEach(line -> add(m, line, table));
      }
    }
    return table.build();
  }

  private static void add(Matter m, Line line, Table.Builder table) {
    if (line instanceof Line.Calculated c) {
      String text =
          c.formula().result().symbol()
              + " = "
              + c.formula().inSymbols()
              + " = "
              + c.withNumbers()
              + " = **"
              + c.resultText()
              + "**";
      table.row(
          signs(text), Shown.plain(c.formula().result().meaning()), cite(m, c.formula().source()));
    } else if (line instanceof Line.Given g) {
      String text =
          g.symbol().symbol()
              + " = **"
              + Writing.with(g.value(), g.symbol().unit(), Line.DIGITS)
              + "**";
      table.row(signs(text), Shown.plain(g.symbol().meaning()), cite(m, g.source()));
    } else {
      table.row(Shown.plain(line.text()), "", "");
    }
  }

  /** Marked-up text: indices are read, other signs stand for themselves. */
  private static String signs(String text) {
    return text.replace("^(", "\\^(");
  }

  private static String cite(Matter m, Source source) {
    return InputsSection.cite(m, source);
  }
}
