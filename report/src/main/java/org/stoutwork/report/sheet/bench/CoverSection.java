package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.People;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.Caution;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Severity;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Verdict;

/** The first page: whose bench, the verdict, what governs, the gravest cautions. */
final class CoverSection {

  /** More cautions than this on the first page, and nobody reads them. */
  private static final int MOST_CAUTIONS = 8;

  private static final List<String> ALWAYS = List.of("C-02", "C-03");

  private CoverSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.unnumbered(1, "Workbench check sheet: " + Shown.plain(m.bench().name())));
    out.add(titleBlock(m));
    out.add(Paragraph.title(verdict(m.result())));
    out.add(Paragraph.lead(governs(m)));
    out.add(Paragraph.of(counts(m.result())));
    out.add(topics(m));
    boolean unsettled =
        governing(m.result()).stream()
            .anyMatch(c -> c.verdict() == Verdict.MARGINAL && c.utilisation() > 1);
    if (unsettled) {
      out.add(
          Paragraph.note(
              "Marginal though above 1: it holds where the joints are as stiff as they may be, and"
                  + " not where they are soft."));
    }
    out.add(cautions(m));
    return out;
  }

  private static Table titleBlock(Matter m) {
    People p = m.bench().people();
    return Table.of(
            Column.share(4, "Project"),
            Column.share(2, "Revision"),
            Column.share(2.4, "Date"),
            Column.share(3.4, "Program"),
            Column.share(2.4, "Inputs"))
        .row(
            said(p.project()),
            said(p.revision()),
            said(p.date()),
            Shown.plain(SheetContent.program(m)) + ", " + m.options().units().words(),
            Shown.plain(m.fingerprint()))
        .dense()
        .build();
  }

  private static String said(String text) {
    return text.isBlank() ? "not stated" : Shown.plain(text);
  }

  private static String verdict(BenchResult result) {
    boolean gaps = !result.notChecked().isEmpty();
    int failing = count(result, Verdict.INADEQUATE);
    return switch (result.verdict()) {
      case INADEQUATE -> "Inadequate in " + failing + " of " + result.checked().size() + " checks";
      case MARGINAL -> "Marginal";
      default -> gaps ? "Adequate in all that was checked" : "Adequate";
    };
  }

  private static String governs(Matter m) {
    CheckResult.Checked worst = m.result().worst();
    String use = Shown.use(worst.utilisation());
    boolean folds = worst.utilisation() > Shown.MOST;
    String ending =
        switch (worst.verdict()) {
          case INADEQUATE ->
              folds
                  ? "Nothing is left to hold it."
                  : worst.wording().least()
                      ? "It needs **" + use + "** times what is there."
                      : "The demand is **" + use + "** times the capacity.";
          case MARGINAL -> uses(worst, use) + ": too close to call safe.";
          default -> uses(worst, use) + ".";
        };
    String load = worst.load().isBlank() ? "" : ", under: " + m.say(worst.load());
    return "**" + m.say(worst.title()) + "** governs, " + where(m, worst) + load + ". " + ending;
  }

  private static String uses(CheckResult.Checked check, String use) {
    return check.wording().least()
        ? "It needs **" + use + "** of what is there"
        : "It uses **" + use + "** of the capacity";
  }

  /** Part and place in words. */
  static String where(Matter m, CheckResult.Checked check) {
    String place = check.place().isBlank() ? "" : " (" + m.say(check.place()) + ")";
    return m.say(check.part()) + place;
  }

  private static int count(BenchResult result, Verdict verdict) {
    return (int) result.checks().stream().filter(c -> c.verdict() == verdict).count();
  }

  private static String counts(BenchResult result) {
    List<String> parts = new ArrayList<>();
    for (Verdict v :
        List.of(Verdict.ADEQUATE, Verdict.MARGINAL, Verdict.INADEQUATE, Verdict.NOT_CHECKED)) {
      parts.add("**" + count(result, v) + "**\u00a0" + v.words().replace(' ', '\u00a0'));
    }
    return String.join(", ", parts)
        + ". All checks: page {page:checks}; sign-off: page {page:sign-off}.";
  }

  /** The governing check of each topic, worst first. */
  static List<CheckResult.Checked> governing(BenchResult result) {
    Map<Topic, CheckResult.Checked> worst = new LinkedHashMap<>();
    for (CheckResult.Checked check : result.checked()) {
      worst.merge(check.topic(), check, (a, b) -> b.utilisation() > a.utilisation() ? b : a);
    }
    return worst.values().stream()
        .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
        .toList();
  }

  private static Table topics(Matter m) {
    Table.Builder table =
        Table.of(
                Column.share(1, "What governs each topic, worst first"),
                Column.mm(56, "Demand over capacity"),
                Column.mm(11, "Page").right())
            .dense();
    for (CheckResult.Checked check : governing(m.result())) {
      table.row(
          List.of(
              Cell.of(
                  "**"
                      + Shown.sentence(check.topic().words())
                      + ": "
                      + Shown.within(m.say(check.title()))
                      + "**, "
                      + m.say(check.part())),
              Shown.barCell(check),
              Cell.of("{page:" + WorkingsSection.anchor(check) + "}")));
    }
    List<String> open =
        m.result().notChecked().stream()
            .filter(c -> m.result().checked().stream().noneMatch(k -> k.topic() == c.topic()))
            .map(c -> Shown.within(m.say(c.title())))
            .distinct()
            .toList();
    if (!open.isEmpty()) {
      table.row(
          List.of(
              Cell.of("**No figure for:** " + String.join("; ", open)),
              Cell.of(Utilisation.notChecked()),
              Cell.of("{page:open}")));
    }
    return table.build();
  }

  /** All warnings, then the two that stand on every first page. */
  static List<Caution> first(BenchResult result) {
    List<Caution> always =
        result.cautions().stream().filter(c -> ALWAYS.contains(c.code())).toList();
    List<Caution> out =
        new ArrayList<>(
            result.cautions().stream()
                .filter(c -> c.severity() == Severity.WARNING)
                .limit((long) MOST_CAUTIONS - always.size())
                .toList());
    out.addAll(always);
    return out;
  }

  private static Table cautions(Matter m) {
    Table.Builder table =
        Table.of(
                Column.mm(20, "Cautions"),
                Column.share(1, "What to know first; all cautions are on page {page:cautions}"))
            .dense();
    for (Caution caution : first(m.result())) {
      table.row("**" + caution.severity() + "**", m.say(caution.message()));
    }
    return table.build();
  }
}
