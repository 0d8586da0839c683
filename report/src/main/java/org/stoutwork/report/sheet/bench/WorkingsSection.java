package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.quantity.Measure;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Worked;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Verdict;
import org.stoutwork.result.Wording;
import org.stoutwork.working.Line;

/**
 * The working of the governing check of each topic and of every check that is not adequate. Checks
 * whose figures are the same, as those of a left and a right part, share one.
 */
final class WorkingsSection {

  private WorkingsSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "Workings", "workings"));
    out.add(
        Paragraph.of(
            "The governing check of each topic, and every check that is marginal or inadequate, the"
                + " worst first. Each line has a number: say it when you disagree. It gives the"
                + " formula, the numbers put in, the result, what each symbol means, and the source"
                + " with its mark; a formula met again names the line where it stands first."
                + " Numbers are shown to four digits and carried in full, so the last digit may"
                + " differ by one. Forces come from the analysis of the frame with its joints at"
                + " their mean stiffness. How the strength of each wood comes about stands in table"
                + " {table:woods}. The workings of all other checks are in the results file that"
                + " the command writes of the same description (--results)."
                + (m.si()
                    ? ""
                    : " Formulas are evaluated in"
                        + " millimetres, newtons, megapascals and kilograms; behind a result in them"
                        + " stands, in brackets, the same in inch-pound units.")));
    for (List<CheckResult.Checked> alike : chosen(m)) {
      out.addAll(working(m, alike));
    }
    return out;
  }

  /** The name by which other sections refer to a working. */
  static String anchor(CheckResult.Checked check) {
    return ("working " + check.key() + " " + check.load()).replaceAll("[{}]", "");
  }

  /** Checks with a working, those with the same figures together. */
  static List<List<CheckResult.Checked>> chosen(Matter m) {
    Set<CheckResult.Checked> wanted = new LinkedHashSet<>(CoverSection.governing(m.result()));
    m.result().checked().stream()
        .filter(c -> c.verdict() == Verdict.MARGINAL || c.verdict() == Verdict.INADEQUATE)
        .forEach(wanted::add);
    Map<String, List<CheckResult.Checked>> alike = new LinkedHashMap<>();
    wanted.stream()
        .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
        .forEach(c -> alike.computeIfAbsent(figures(c), k -> new ArrayList<>()).add(c));
    return List.copyOf(alike.values());
  }

  private static String figures(CheckResult.Checked c) {
    return String.join(
        "|",
        c.title(),
        c.demand().toString(),
        c.capacity().toString(),
        Shown.use(c.utilisation()),
        c.verdict().words());
  }

  private static List<Block> working(Matter m, List<CheckResult.Checked> alike) {
    CheckResult.Checked check = alike.get(0);
    List<Line> lines = check.working().lines();
    List<Block> head = new ArrayList<>();
    head.add(Heading.of(2, m.say(check.title()), anchor(check)));
    head.add(Paragraph.of(what(m, check)));
    if (!check.note().isBlank()) {
      head.add(Paragraph.note(m.say(check.note())));
    }
    List<Block> foot = new ArrayList<>();
    int n = lines.size();
    if (n > 0) {
      head.add(worked(m, lines.subList(0, 1)));
    }
    if (n > 1) {
      foot.add(worked(m, lines.subList(n - 1, n)));
    }
    foot.add(Paragraph.of(comparison(m, check)));
    if (alike.size() > 1) {
      foot.add(Paragraph.note(others(m, alike)));
    }
    check.working().sources().forEach(m.sources()::name);
    List<Block> out = new ArrayList<>();
    out.add(new Block.Together(head));
    if (n > 2) {
      out.add(worked(m, lines.subList(1, n - 1)));
    }
    out.add(new Block.Together(foot));
    return out;
  }

  /** Lines with their results in the reader's units too, and remarks in the reader's units. */
  private static Worked worked(Matter m, List<Line> lines) {
    List<Line> out = new ArrayList<>();
    List<String> also = new ArrayList<>();
    for (Line line : lines) {
      if (line instanceof Line.Remark remark) {
        out.add(new Line.Remark(m.amounts().inWords(remark.text())));
        also.add("");
      } else {
        out.add(line);
        also.add(amount(line).map(m.amounts()::also).orElse(""));
      }
    }
    return new Worked(out, also);
  }

  /** The result of a line; empty where it has none, as a demand over no capacity at all. */
  private static Optional<Measure> amount(Line line) {
    double value = line instanceof Line.Calculated c ? c.value() : ((Line.Given) line).value();
    if (!Double.isFinite(value)) {
      return Optional.empty();
    }
    return Optional.of(
        new Measure(
            value,
            line instanceof Line.Calculated c
                ? c.formula().result().unit()
                : ((Line.Given) line).symbol().unit()));
  }

  private static String what(Matter m, CheckResult.Checked check) {
    String with =
        check.combination().isBlank() ? "" : "; combination: " + m.say(check.combination());
    String load = check.load().isBlank() ? "" : " **Under:** " + m.say(check.load()) + with + ".";
    return "**Checked:** " + CoverSection.where(m, check) + "." + load;
  }

  private static String comparison(Matter m, CheckResult.Checked check) {
    String demand = m.amounts().of(check.demand());
    String capacity = m.amounts().of(check.capacity());
    Wording wording = check.wording();
    String over =
        Shown.plain(
            wording.least()
                ? wording.verb() + " " + wording.after(demand, capacity)
                : "demand %s, capacity %s".formatted(demand, capacity)
                    + (wording.of().isEmpty() ? "" : " " + wording.of()));
    String verdict = "**" + Shown.use(check.utilisation()) + ": " + check.verdict().words() + "**";
    return check
        .range()
        .filter(Shown::matters)
        .map(
            r ->
                "**Comparison:** "
                    + over
                    + "; "
                    + ends(r)
                    + " The largest decides: "
                    + verdict
                    + ".")
        .orElseGet(() -> "**Comparison:** " + over + "; utilisation " + verdict + ".");
  }

  private static String ends(StiffnessRange r) {
    return "utilisation %s with soft, %s with mean and %s with stiff joints."
        .formatted(Shown.use(r.low()), Shown.use(r.mean()), Shown.use(r.high()));
  }

  private static String others(Matter m, List<CheckResult.Checked> alike) {
    List<String> names = new ArrayList<>();
    for (CheckResult.Checked check : alike.subList(1, alike.size())) {
      boolean whole = check.topic() == Topic.STABILITY;
      names.add(CoverSection.where(m, check) + (whole ? ", " + m.say(check.load()) : ""));
    }
    return "The same figures hold for: " + String.join("; ", names) + ".";
  }
}
