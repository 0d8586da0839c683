package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Wording;

/** Every check by topic, then what was not checked, then the loads and combinations by name. */
final class ChecksSection {

  private ChecksSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "All checks", "checks"));
    out.add(
        Paragraph.of(
            "By topic, the worst first; parts with the same figures share a row. Utilisation is"
                + " demand over capacity, and where a least measure is asked for, what is needed"
                + " over what is there. The bar ends at it, with the limit line at 1.0: an open"
                + " bar is adequate, a hatched one marginal (from 0.9 on), a solid one inadequate. "
                + (ranges(m)
                    ? "Where the stiffness of the joints matters, a thin line under the bar shows"
                        + " the range, and the column beside it gives the figures with soft, mean"
                        + " and stiff joints; the largest decides, but what holds with the"
                        + " favourable joints is marginal rather than inadequate. Demand and"
                        + " capacity are those at the mean stiffness. "
                    : "")
                + "L and K name the load and the combination, listed in tables {table:loads} and"
                + " {table:combinations}."));
    out.add(table(m));
    out.add(notChecked(m));
    out.add(loads(m));
    out.add(Block.Together.of(combinations(m)));
    return out;
  }

  private static boolean ranges(Matter m) {
    return m.result().checked().stream()
        .anyMatch(c -> c.range().filter(ChecksSection::differs).isPresent());
  }

  private static Table table(Matter m) {
    boolean ranges = ranges(m);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.share(1, "Check, part and place"));
    columns.add(Column.mm(26, "Demand, capacity").right());
    columns.add(Column.mm(43, "Utilisation"));
    if (ranges) {
      columns.add(Column.mm(21, "Soft, mean, stiff").right());
    }
    columns.add(Column.mm(10, "Load"));
    Table.Builder table =
        Table.of(columns.toArray(Column[]::new))
            .caption("All checks that came to a number")
            .anchor("all")
            .dense();
    Topic topic = null;
    for (List<CheckResult.Checked> alike : alike(m)) {
      if (alike.get(0).topic() != topic) {
        topic = alike.get(0).topic();
        table.group(Shown.sentence(topic.words()));
      }
      table.row(row(m, alike, ranges));
    }
    return table.build();
  }

  /** Checks in their order, those with the same printed figures together. */
  private static List<List<CheckResult.Checked>> alike(Matter m) {
    Map<List<Object>, List<CheckResult.Checked>> out = new LinkedHashMap<>();
    for (CheckResult.Checked c : m.result().checked()) {
      List<Object> figures =
          List.of(
              c.topic(),
              c.title(),
              c.wording(),
              m.amounts().pair(c.demand(), c.capacity()),
              Shown.use(c.utilisation()),
              c.range().map(ChecksSection::range).orElse(""),
              c.verdict(),
              c.note());
      out.computeIfAbsent(figures, k -> new ArrayList<>()).add(c);
    }
    return List.copyOf(out.values());
  }

  private static List<Cell> row(Matter m, List<CheckResult.Checked> alike, boolean ranges) {
    CheckResult.Checked check = alike.get(0);
    String note = check.note().isBlank() ? "" : ". //" + m.say(check.note()) + "//";
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of("**" + m.say(check.title()) + "**: " + places(m, alike) + note));
    cells.add(Cell.of(Shown.plain(figures(m, check))));
    cells.add(Shown.barCell(check));
    if (ranges) {
      cells.add(Cell.of(check.range().map(ChecksSection::range).orElse("\u2013")));
    }
    cells.add(Cell.of(names(m, alike)));
    return cells;
  }

  /** Demand and capacity; that a least measure is asked for is said, and what shares are of. */
  private static String figures(Matter m, CheckResult.Checked check) {
    Wording wording = check.wording();
    String pair = m.amounts().pair(check.demand(), check.capacity());
    String said = wording.least() ? "needs\u00a0" + pair.replace(", ", ", has\u00a0") : pair;
    return wording.of().isEmpty() ? said : said + " " + wording.of();
  }

  /** Parts with their places; parts checked at the same place share its words. */
  private static String places(Matter m, List<CheckResult.Checked> alike) {
    Map<String, Set<String>> parts = new LinkedHashMap<>();
    for (CheckResult.Checked c : alike) {
      parts.computeIfAbsent(m.say(c.place()), k -> new LinkedHashSet<>()).add(m.say(c.part()));
    }
    List<String> out = new ArrayList<>();
    parts.forEach(
        (place, names) ->
            out.add(String.join(", ", names) + (place.isBlank() ? "" : " (" + place + ")")));
    return String.join("; ", out);
  }

  private static String range(StiffnessRange r) {
    return differs(r)
        ? Shown.use(r.low()) + " " + Shown.use(r.mean()) + " " + Shown.use(r.high())
        : "\u2013";
  }

  /** Whether the figures with soft, mean and stiff joints differ as they are printed. */
  private static boolean differs(StiffnessRange r) {
    return !Shown.use(r.smallest()).equals(Shown.use(r.largest()));
  }

  private static String names(Matter m, List<CheckResult.Checked> alike) {
    Set<String> names = new LinkedHashSet<>();
    for (CheckResult.Checked check : alike) {
      if (!check.load().isBlank()) {
        names.add(m.loads().name(check.load()));
      }
    }
    for (CheckResult.Checked check : alike) {
      if (!check.combination().isBlank()) {
        names.add(m.combinations().name(check.combination()));
      }
    }
    return String.join(" ", names);
  }

  private static Block notChecked(Matter m) {
    List<CheckResult.NotChecked> left = m.result().notChecked();
    if (left.isEmpty()) {
      return Paragraph.of("**Not checked:** nothing of what this sheet asks was left out.");
    }
    Table.Builder table =
        Table.of(
                Column.share(1.1, "Question"),
                Column.share(1, "Part"),
                Column.share(2.6, "Not checked, because"))
            .caption("Not checked: these questions are open, and somebody must answer them")
            .anchor("open")
            .dense();
    for (CheckResult.NotChecked check : left) {
      table.row(
          "**" + m.say(check.title()) + "**",
          m.say(check.part()),
          m.say(Shown.sentence(check.reason())) + ".");
    }
    return table.build();
  }

  private static Table loads(Matter m) {
    Table.Builder table =
        Table.of(Column.mm(9, "Name"), Column.share(1, "Load and where it stands"))
            .caption("Loads that govern a check; their sizes are in table {table:actions}")
            .anchor("loads")
            .dense();
    for (Map.Entry<String, String> entry : m.loads().entries()) {
      table.row("**" + entry.getValue() + "**", m.say(Shown.sentence(entry.getKey())));
    }
    return table.build();
  }

  private static Table combinations(Matter m) {
    Table.Builder table =
        Table.of(Column.mm(9, "Name"), Column.share(1, "What stands together"))
            .caption("Combinations; the leading action is the load named beside them")
            .anchor("combinations")
            .dense();
    for (Map.Entry<String, String> entry : m.combinations().entries()) {
      table.row("**" + entry.getValue() + "**", m.say(Shown.sentence(entry.getKey())));
    }
    return table.build();
  }
}
