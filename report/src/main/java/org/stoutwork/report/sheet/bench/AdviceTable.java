package org.stoutwork.report.sheet.bench;

import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.AdviceLine;

/** Where joints leave the proportions of the trade, with the effect of following them. */
final class AdviceTable {

  private AdviceTable() {}

  /** The table; empty where every joint follows the trade. */
  static Optional<Table> of(Matter m) {
    List<AdviceLine> left = m.result().advice().stream().filter(line -> !line.followed()).toList();
    if (left.isEmpty()) {
      return Optional.empty();
    }
    Table.Builder table =
        Table.of(
                Column.share(1.5, "Joint, one of each kind"),
                Column.share(2, "What makers do"),
                Column.mm(30, "Here"),
                Column.share(1.7, "If it were followed"))
            .caption(
                "Where joints leave the proportions of the trade. No verdict: nothing fails by it")
            .anchor("advice")
            .dense();
    for (AdviceLine line : left) {
      table.row(
          m.say(line.joint()),
          "**"
              + m.say(line.part())
              + "**: "
              + m.say(line.words())
              + " ("
              + line.source().mark().words()
              + ")",
          Shown.plain(m.amounts().of(line.value(), line.of())),
          effect(m, line));
    }
    return Optional.of(table.build());
  }

  private static String effect(Matter m, AdviceLine line) {
    return line.ratio()
        .map(ratio -> m.say(line.effect()) + " × " + Writing.fixed(ratio, 2))
        .orElse("not calculated");
  }
}
