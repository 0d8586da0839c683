package org.stoutwork.report.sheet.bench;

import java.util.Locale;
import org.stoutwork.report.drawing.Markup;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.report.sheet.Verdict;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;

/** Small pieces of text and bars that several sections share. */
final class Shown {

  /** A utilisation beyond this says only that nothing holds. */
  static final double MOST = 999;

  private static final double SAME = 5e-4;

  private Shown() {}

  /** Characters as they are, for use in marked-up text. */
  static String plain(String text) {
    return Markup.escape(text);
  }

  /** Begins with a capital. */
  static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Begins with a small letter. */
  static String within(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  /** A verdict of the checks as the sheet shows it. */
  static Verdict verdict(org.stoutwork.result.Verdict verdict) {
    return switch (verdict) {
      case ADEQUATE -> Verdict.ADEQUATE;
      case MARGINAL -> Verdict.MARGINAL;
      case INADEQUATE -> Verdict.INADEQUATE;
      case NOT_CHECKED -> Verdict.NOT_CHECKED;
    };
  }

  /** The bar of a check. */
  static Utilisation bar(CheckResult check) {
    if (!(check instanceof CheckResult.Checked checked)) {
      return Utilisation.notChecked();
    }
    double value = Math.max(0, checked.utilisation());
    Verdict word = verdict(checked.verdict());
    return checked
        .range()
        .filter(Shown::matters)
        .map(r -> Utilisation.between(Math.max(0, Math.min(r.smallest(), value)), value, word))
        .orElseGet(() -> Utilisation.of(value, word));
  }

  /** A bar as a cell. */
  static Cell barCell(CheckResult check) {
    return Cell.of(bar(check));
  }

  /** Whether a value depends on the joints' stiffness as far as it is printed. */
  static boolean matters(StiffnessRange range) {
    return range.largest() - range.smallest() > SAME * Math.max(1, Math.abs(range.largest()));
  }

  /** A utilisation as it is printed everywhere. */
  static String use(double utilisation) {
    return org.stoutwork.result.Utilisation.shown(utilisation);
  }

  /** A count with its noun. */
  static String count(int n, String one, String several) {
    return n + "\u00a0" + (n == 1 ? one : several);
  }
}
