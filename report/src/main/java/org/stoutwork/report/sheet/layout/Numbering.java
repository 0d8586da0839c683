package org.stoutwork.report.sheet.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stoutwork.working.Formula;

/**
 * Counts sections, figures, tables and lines of calculation, and knows what references stand for.
 * Numbers of a previous pass stand in for what this pass has not reached yet.
 */
final class Numbering {

  private final Map<String, String> earlier;
  private final Map<String, String> found = new TreeMap<>();
  private final int[] sections = new int[3];
  private int heading;
  private int figures;
  private int tables;
  private int lines;
  private final Map<Formula, Integer> formulas = new HashMap<>();
  private final Set<String> told = new HashSet<>();

  Numbering(Map<String, String> earlier) {
    this.earlier = earlier;
  }

  /** Notes a heading of a level, which may go one deeper than the one before and not more. */
  void heading(int level) {
    if (level > heading + 1) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "a heading of level %d follows one of level %d; put one of level %d between",
              level,
              heading,
              heading + 1));
    }
    heading = level;
    told.clear();
  }

  /** The line at which a formula stood first; this one, if it has not been met before. */
  int firstLine(Formula formula, int line) {
    Integer first = formulas.putIfAbsent(formula, line);
    return first == null ? line : first;
  }

  /** Whether something is said for the first time since the last heading. */
  boolean tell(String meaning) {
    return told.add(meaning);
  }

  String section(int level, String anchor) {
    sections[level - 1]++;
    StringBuilder number = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      if (i >= level) {
        sections[i] = 0;
      } else {
        number.append(i == 0 ? "" : ".").append(sections[i]);
      }
    }
    note("section", anchor, number.toString());
    return number.toString();
  }

  int figure(String anchor) {
    note("figure", anchor, Integer.toString(++figures));
    return figures;
  }

  int table(String anchor) {
    note("table", anchor, Integer.toString(++tables));
    return tables;
  }

  int line() {
    return ++lines;
  }

  void page(String anchor, int number) {
    note("page", anchor, Integer.toString(number));
  }

  void pages(int count) {
    found.put("pages", Integer.toString(count));
  }

  /** What a reference stands for, as far as known. */
  String resolve(String reference) {
    String known = found.get(reference);
    return known != null ? known : earlier.getOrDefault(reference, "00");
  }

  Map<String, String> found() {
    return found;
  }

  private void note(String kind, String anchor, String number) {
    if (!anchor.isEmpty() && found.put(kind + ":" + anchor, number) != null) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT, "two places are called \"%s\"; give each its own name", anchor));
    }
  }
}
