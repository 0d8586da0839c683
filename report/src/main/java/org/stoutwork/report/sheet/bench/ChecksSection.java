package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;

/** Every check by topic, then what was not checked, then the loads and combinations by name. */
final class ChecksSection {

  private ChecksSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(new Block.PageBreak());
    out.add(Heading.of(1, "All checks", "checks"));
    out.add(
        Paragraph.of(
            "By topic, the worst first. The bar ends at demand over capacity, with the limit line at"
                + " 1.0: an open bar is adequate, a hatched one marginal, a solid one inadequate."
                + " Where the stiffness of the joints matters, a thin line under the bar shows the"
                + " range, and the column beside it gives the figures with soft, mean and stiff"
                + " joints; the largest decides, but what holds with the favourable joints is"
                + " marginal rather than inadequate. Marginal is also what uses at least 0.9. Demand and capacity are those at the joints' mean stiffness."
                + " L and K name the load and the combination, listed in tables {table:loads} and"
                + " {table:combinations}."));
    out.add(table(m));
    out.add(notChecked(m));
    out.add(loads(m));
    out.add(Block.Together.of(combinations(m)));
    return out;
  }

  private static Table table(Matter m) {
    Table.Builder table =
        Table.of(
                Column.share(1, "Check, part and place"),
                Column.mm(26, "Demand, capacity").right(),
                Column.mm(47, "Utilisation"),
                Column.mm(12, "Soft, mean, stiff").right(),
                Column.mm(9, "Load"))
            .caption("All checks that came to a number")
            .anchor("all")
            .dense();
    Topic topic = null;
    for (CheckResult.Checked check : m.result().checked()) {
      if (check.topic() != topic) {
        topic = check.topic();
        table.group(Shown.sentence(topic.words()));
      }
      table.row(row(m, check));
    }
    return table.build();
  }

  private static List<Cell> row(Matter m, CheckResult.Checked check) {
    String note = check.note().isBlank() ? "" : ". //" + m.say(check.note()) + "//";
    return List.of(
        Cell.of("**" + m.say(check.title()) + "**: " + CoverSection.where(m, check) + note),
        Cell.of(Shown.plain(m.amounts().pair(check.demand(), check.capacity()))),
        Shown.barCell(check),
        Cell.of(check.range().map(ChecksSection::range).orElse("\u2013")),
        Cell.of(names(m, check)));
  }

  private static String range(StiffnessRange r) {
    return Shown.matters(r)
        ? Shown.use(r.low()) + " " + Shown.use(r.mean()) + " " + Shown.use(r.high())
        : "\u2013";
  }

  private static String names(Matter m, CheckResult.Checked check) {
    String load = check.load().isBlank() ? "" : m.loads().name(check.load());
    String with = check.combination().isBlank() ? "" : m.combinations().name(check.combination());
    return load + (load.isEmpty() || with.isEmpty() ? "" : " ") + with;
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
            .anchor("open");
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
        Table.of(Column.mm(14, "Name"), Column.share(1, "Load and where it stands"))
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
        Table.of(Column.mm(14, "Name"), Column.share(1, "What stands together"))
            .caption("Combinations; the leading action is the load named beside them")
            .anchor("combinations")
            .dense();
    for (Map.Entry<String, String> entry : m.combinations().entries()) {
      table.row("**" + entry.getValue() + "**", m.say(Shown.sentence(entry.getKey())));
    }
    return table.build();
  }
}
