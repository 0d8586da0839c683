package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.Markup;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.MaterialLine;
import org.stoutwork.source.Source;
import org.stoutwork.working.Line;

/** The values of each wood that the checks use, and how each comes about, a value a row. */
final class WoodsTable {

  private WoodsTable() {}

  static Table of(Matter m) {
    Table.Builder table =
        Table.of(
                Column.mm(46, "Value and its mark"),
                Column.share(1, "How it comes about, line by line, each with its source"))
            .caption("Woods: means, then strengths under a short action, as the checks use them")
            .anchor("woods")
            .dense();
    for (MaterialLine wood : m.result().materials()) {
      String key = wood.key().equals(wood.name()) ? "" : " (" + Shown.plain(wood.key()) + ")";
      table.group(Shown.plain(wood.name()) + key + ", for " + Shown.plain(wood.usedFor()));
      Set<String> told = new LinkedHashSet<>();
      for (MaterialLine.Value v : wood.values()) {
        table.row(List.of(Cell.of(value(m, v)), Cell.lines(lines(m, v, told))));
      }
    }
    return table.build();
  }

  /** The value with its meaning and the mark of the least firm of its sources. */
  private static String value(Matter m, MaterialLine.Value v) {
    return "**"
        + v.symbol()
        + " = "
        + Shown.plain(m.amounts().of(v.measure()))
        + "** "
        + Shown.plain(v.meaning())
        + "; "
        + Shown.plain(v.source().mark().words());
  }

  /** Values that enter stand in one line, every formula begins one. */
  private static List<String> lines(Matter m, MaterialLine.Value v, Set<String> told) {
    List<String> out = new ArrayList<>();
    boolean given = false;
    for (Line line : v.working().lines()) {
      String text = line(m, line, told);
      int last = out.size() - 1;
      if (given && line instanceof Line.Given) {
        out.set(last, out.get(last) + "; " + text);
      } else {
        out.add(text);
      }
      given = line instanceof Line.Given;
    }
    return out;
  }

  private static String line(Matter m, Line line, Set<String> told) {
    if (line instanceof Line.Calculated c) {
      return signs(
              c.formula().result().symbol()
                  + " = "
                  + c.formula().inSymbols()
                  + " = "
                  + c.withNumbers()
                  + " = **"
                  + c.resultText().replace(' ', '\u00a0')
                  + "**")
          + cited(m, c.formula().source());
    }
    if (line instanceof Line.Given g) {
      String value =
          signs(
              g.symbol().symbol()
                  + " = "
                  + Writing.with(g.value(), g.symbol().unit(), Line.DIGITS));
      String meaning =
          told.add(value + g.symbol().meaning())
              ? " (" + Shown.plain(g.symbol().meaning()) + ")"
              : "";
      return value + meaning + cited(m, g.source());
    }
    return "//" + Markup.prose(line.text().replaceAll("[.:]$", "")) + "//";
  }

  private static String cited(Matter m, Source source) {
    return "\u00a0" + Shown.plain("[" + m.sources().name(source) + "]");
  }

  /** Marked-up text: indices are read, other signs stand for themselves. */
  private static String signs(String text) {
    return text.replace("^(", "\\^(");
  }
}
