package org.stoutwork.report.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.result.AdviceLine;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.Caution;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Severity;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;

/** The results of a bench for people to read, on a terminal of 80 columns. */
final class CheckSummary {

  private static final int MOST_LISTED = 8;
  private static final int FEW_DEFAULTS = 5;
  private static final int INDENT = 1 + PlainBar.WIDTH + 1;

  private final BenchResult result;
  private final Amounts amounts;
  private final boolean full;
  private final List<String> lines = new ArrayList<>();

  private CheckSummary(BenchResult result, UnitSystem units, boolean full) {
    this.result = result;
    this.amounts = new Amounts(units);
    this.full = full;
  }

  /**
   * Prints the summary.
   *
   * @param result of checking a bench
   * @param units in which figures are shown
   * @param full whether everything is listed, not only what matters most
   * @param written what was written where, one line each
   * @param out where to print
   */
  static void print(
      BenchResult result, UnitSystem units, boolean full, List<String> written, PrintStream out) {
    new CheckSummary(result, units, full).lines().forEach(out::println);
    if (!written.isEmpty()) {
      out.println();
      written.forEach(out::println);
    }
    out.flush();
  }

  private List<String> lines() {
    verdict();
    worst();
    list(Verdict.INADEQUATE, "Inadequate");
    list(Verdict.MARGINAL, "Marginal");
    list(Verdict.ADEQUATE, "Adequate, the most used first");
    counts();
    result.racking().forEach(this::racking);
    lines.add("Mass: " + amounts.mass(result.massKg()) + " with what is fixed to it");
    defaults();
    advice();
    cautions();
    return lines;
  }

  private void verdict() {
    String verdict = result.verdict().words();
    String why = result.verdict() == Verdict.MARGINAL ? ", holds with little to spare" : "";
    lines.addAll(TextFlow.lines("Verdict: " + verdict + why + ". ", 2, result.bench().name()));
    lines.add("");
  }

  private void worst() {
    CheckResult.Checked worst = result.worst();
    String governs = worst.title() + ", " + worst.part();
    lines.addAll(TextFlow.lines("Governs: ", 9, governs));
    lines.addAll(TextFlow.lines("  where: ", 9, amounts.inWords(worst.place())));
    lines.addAll(TextFlow.lines("  under: ", 9, amounts.inWords(worst.load())));
    String figures =
        worst.wording().after(amounts.of(worst.demand()), amounts.of(worst.capacity()))
            + worst.range().map(r -> range(r)).orElse("");
    lines.addAll(TextFlow.lines("%-9s".formatted("  " + worst.wording().verb() + ":"), 9, figures));
    lines.add("");
  }

  private static String range(StiffnessRange use) {
    return use.largest() - use.smallest() < 0.005
        ? ""
        : ", joints at their mean; %s to %s of it over the range of their stiffness"
            .formatted(Utilisation.shown(use.smallest()), Utilisation.shown(use.largest()));
  }

  private void list(Verdict verdict, String heading) {
    List<CheckResult.Checked> all =
        result.checked().stream()
            .filter(c -> c.verdict() == verdict)
            .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
            .toList();
    if (all.isEmpty()) {
      return;
    }
    int most = full ? all.size() : verdict == Verdict.ADEQUATE ? MOST_LISTED / 2 : MOST_LISTED;
    lines.add(heading + ":");
    for (CheckResult.Checked check : all.subList(0, Math.min(most, all.size()))) {
      String bar = " " + PlainBar.of(check.utilisation()) + " ";
      lines.addAll(
          TextFlow.lines(bar, INDENT, check.title() + ": " + subject(check) + unsettled(check)));
    }
    if (all.size() > most) {
      lines.add("  and " + (all.size() - most) + " more");
    }
    lines.add("");
  }

  /** What is marginal because of its joints alone says between what it lies. */
  private static String unsettled(CheckResult.Checked check) {
    return check
        .range()
        .filter(r -> check.verdict() == Verdict.MARGINAL && r.largest() > 1)
        .map(
            r ->
                "; %s with stiff joints, %s with soft"
                    .formatted(Utilisation.shown(r.smallest()), Utilisation.shown(r.largest())))
        .orElse("");
  }

  /** Standing is told apart by what acts, everything else by the part. */
  private static String subject(CheckResult.Checked check) {
    return check.topic() == Topic.STABILITY ? check.load() : check.part();
  }

  private void counts() {
    lines.add(
        String.format(
            Locale.ROOT,
            "%d checks: %d adequate, %d marginal, %d inadequate",
            result.checked().size(),
            count(Verdict.ADEQUATE),
            count(Verdict.MARGINAL),
            count(Verdict.INADEQUATE)));
    for (CheckResult.NotChecked open : result.notChecked()) {
      lines.addAll(
          TextFlow.lines(
              "Not checked: ", 13, open.title() + ": " + amounts.inWords(open.reason())));
    }
  }

  private long count(Verdict verdict) {
    return result.checks().stream().filter(c -> c.verdict() == verdict).count();
  }

  private void racking(Racking racking) {
    StiffnessRange k = racking.stiffness();
    String spread =
        k.largest() - k.smallest() < 1e-6 * k.mean()
            ? ""
            : " (%s to %s)".formatted(stiffness(k.smallest()), stiffness(k.largest()));
    String text =
        "%s%s %s, sways %s under %s"
            .formatted(
                stiffness(k.mean()),
                spread,
                amounts.swayStiffnessUnit(),
                amounts.movement(racking.sway().mean()),
                amounts.force(racking.force()));
    lines.addAll(TextFlow.lines("Racking " + racking.way().words() + ": ", 2, text));
  }

  private String stiffness(double value) {
    return amounts.bareSwayStiffness(value);
  }

  private void defaults() {
    int count = result.bench().defaults().size();
    boolean listed = full || count <= FEW_DEFAULTS;
    if (count == 0) {
      return;
    }
    lines.add(
        count + " values were not given and filled in" + (listed ? ":" : "; --full lists them"));
    if (listed) {
      result
          .bench()
          .defaults()
          .forEach(
              d ->
                  lines.addAll(
                      TextFlow.lines(
                          "  ",
                          4,
                          amounts.inWords(d.key() + ": " + d.value() + " (" + d.reason() + ")"))));
    }
  }

  /** Proportions of the trade that joints leave, one line each. */
  private void advice() {
    List<AdviceLine> left = result.advice().stream().filter(a -> !a.followed()).toList();
    if (left.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Made otherwise than the trade does; nothing fails by it:");
    int most = full ? left.size() : Math.min(MOST_LISTED, left.size());
    left.subList(0, most).forEach(line -> lines.addAll(TextFlow.lines("  ", 4, advice(line))));
    if (left.size() > most) {
      lines.add("  and " + (left.size() - most) + " more; --full lists them");
    }
  }

  private String advice(AdviceLine line) {
    String here =
        "%s %s: %s; %s"
            .formatted(
                line.part(),
                amounts.of(line.value(), line.of()),
                line.joint(),
                amounts.inWords(line.words()));
    String effect =
        line.ratio()
            .map(r -> "; followed: %s × %s".formatted(line.effect(), Writing.fixed(r, 2)))
            .orElse("");
    return full ? here + effect : here;
  }

  private void cautions() {
    lines.add("");
    int left = 0;
    for (Caution caution : result.cautions()) {
      if (full || caution.severity() == Severity.WARNING) {
        String head = caution.severity() + " " + caution.code() + "  ";
        lines.addAll(TextFlow.lines(head, 2, amounts.inWords(caution.message())));
      } else {
        left++;
      }
    }
    if (left > 0) {
      lines.add(left + " further cautions; --full lists them");
    }
  }
}
