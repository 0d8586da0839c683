package org.stoutwork.report.file.field;

import java.util.Locale;
import java.util.regex.Pattern;
import org.stoutwork.report.file.tree.ShortNumber;

/**
 * Reads plain numbers, by one grammar for YAML and JSON. What different YAML readers take for
 * different numbers is refused: {@code 0100}, {@code 0x10}, {@code 1_000}, {@code 1:30}, {@code
 * 1,5}.
 */
public final class NumberText {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");
  private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,18}");
  private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0\\d.*");
  private static final Pattern BASED = Pattern.compile("[-+]?0[xXoObB].*");
  private static final Pattern SEXAGESIMAL = Pattern.compile("[-+]?\\d+(:\\d+)+(\\.\\d*)?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?\\.?(nan|inf|infinity)", Pattern.CASE_INSENSITIVE);
  private static final Pattern WITH_COMMA = Pattern.compile("[-+]?\\d+(,\\d+)+(\\.\\d*)?");
  private static final Pattern WITH_LINE = Pattern.compile("[-+]?[\\d_]*\\d_[\\d_.]*");
  private static final Pattern THEN_UNIT =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)\\s*[\\p{L}%°\"'].*");

  private NumberText() {}

  /**
   * Reads a number.
   *
   * @param text the text, without blanks around it
   * @return a finite number
   * @throws NotUnderstood when the text is no number, saying why
   */
  public static double read(String text) throws NotUnderstood {
    if (!NUMBER.matcher(text).matches()) {
      throw notANumber(text);
    }
    if (LEADING_ZERO.matcher(text).matches()) {
      throw leadingZero(text);
    }
    double value = Double.parseDouble(text);
    if (!Double.isFinite(value)) {
      throw new NotUnderstood("it is too large to be calculated with", "");
    }
    if (value == 0 && text.split("[eE]", 2)[0].matches(".*[1-9].*")) {
      throw new NotUnderstood("it is too small to be calculated with", "");
    }
    return value;
  }

  /**
   * Reads a whole number.
   *
   * @param text the text, without blanks around it
   * @return the number
   * @throws NotUnderstood when the text is no whole number, saying why
   */
  public static long readWhole(String text) throws NotUnderstood {
    double value = read(text);
    if (WHOLE.matcher(text).matches()) {
      return Long.parseLong(text);
    }
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    throw new NotUnderstood(
        "", whole ? "Did you mean " + String.format(Locale.ROOT, "%.0f", value) + "?" : "");
  }

  private static NotUnderstood leadingZero(String text) {
    String rest = text.replaceFirst("^([-+]?)0+(?=\\d)", "$1");
    return new NotUnderstood(
        "some readers take a leading 0 for a number to base eight", "Did you mean " + rest + "?");
  }

  private static NotUnderstood notANumber(String text) {
    if (NOT_FINITE.matcher(text).matches()) {
      return new NotUnderstood("it must be finite", "");
    }
    if (BASED.matcher(text).matches()) {
      return new NotUnderstood("numbers to other bases than ten are not read", "");
    }
    if (WITH_COMMA.matcher(text).matches()) {
      return comma(text);
    }
    if (WITH_LINE.matcher(text).matches()) {
      return new NotUnderstood(
          "underscores in numbers are not read", question(text.replace("_", "")));
    }
    if (SEXAGESIMAL.matcher(text).matches()) {
      return new NotUnderstood("some readers take a colon for a number to base sixty", "");
    }
    if (THEN_UNIT.matcher(text).matches()) {
      return new NotUnderstood("no unit is written here", "");
    }
    return new NotUnderstood("", "");
  }

  /** One comma before other than three digits must be a decimal comma; else it may be either. */
  private static NotUnderstood comma(String text) {
    boolean decimal = text.matches("[-+]?\\d+,(\\d{1,2}|\\d{4,})");
    return new NotUnderstood(
        "commas are not read; write a decimal point",
        decimal ? question(text.replace(',', '.')) : "");
  }

  private static String question(String repaired) {
    try {
      return "Did you mean " + ShortNumber.of(read(repaired)) + "?";
    } catch (NotUnderstood e) {
      return "";
    }
  }
}
