package org.stoutwork.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what a person writes for a quantity: {@code 70 mm}, {@code 70mm}, {@code 2 3/4 in}, {@code
 * 2-3/4"}, {@code 5 ft 6 in}, {@code 1.2e3 N}, or a bare number in a stated default unit.
 *
 * <p>Refused in plain words: decimal commas and thousands separators, values that are not finite,
 * hexadecimal and octal forms, unknown units, and units that measure something else.
 */
public final class QuantityText {

  private static final Pattern SHAPE =
      Pattern.compile(
          "(?<sign>[-+\u2212]?)\\s*"
              + "(?:(?<whole>\\d+)[\\s-]+(?<num>\\d+)/(?<den>\\d+)"
              + "|(?<onlyNum>\\d+)/(?<onlyDen>\\d+)"
              + "|(?<decimal>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?))"
              + "(?<unit>\\s*[^\\s\\d,.].*)?");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(?<sign>[-+\u2212]?)(?<feet>\\d+)\\s*(?:ft\\.?|feet|foot|['\u2032])[\\s-]*(?<inches>\\d[\\d\\s./-]*(?:in|inch|inches|\"|\u2033))");
  private static final Pattern OCTAL_LOOK = Pattern.compile("[-+]?0\\d+(\\s.*)?");
  private static final Pattern COMMA = Pattern.compile(".*\\d,\\d.*");

  private QuantityText() {}

  /**
   * Reads one quantity.
   *
   * @param text what was written
   * @param target the unit in which the value is wanted
   * @param bare the unit of a bare number, or empty if a bare number is refused
   * @return the value in {@code target}
   * @throws QuantityFault if the text is no such quantity; its message says what is wrong
   */
  public static double read(String text, Unit target, Optional<Unit> bare) {
    String given = text.strip();
    refuseLookalikes(given);
    Matcher feet = FEET_AND_INCHES.matcher(given);
    if (feet.matches()) {
      double both =
          Unit.FT.convert(Double.parseDouble(feet.group("feet")), Unit.IN)
              + read(feet.group("inches"), Unit.IN, Optional.empty());
      return inUnit((isMinus(feet.group("sign")) ? -1 : 1) * both, Unit.IN, target);
    }
    Matcher shape = SHAPE.matcher(given);
    if (!shape.matches()) {
      throw new QuantityFault("it is not a number with a unit");
    }
    Unit unit = unitOf(shape.group("unit"), target, bare);
    double value = (isMinus(shape.group("sign")) ? -1 : 1) * magnitude(shape);
    return inUnit(value, unit, target);
  }

  private static double inUnit(double value, Unit unit, Unit target) {
    if (!unit.dimension().equals(target.dimension())) {
      throw notMeasured(unit, target);
    }
    double converted = unit.convert(value, target);
    if (!Double.isFinite(converted)) {
      throw new QuantityFault("the number is too large to be real");
    }
    return converted;
  }

  private static QuantityFault notMeasured(Unit unit, Unit target) {
    return new QuantityFault(
        "%s does not measure this; a unit such as %s does"
            .formatted(unit.symbol(), target.symbol()));
  }

  private static void refuseLookalikes(String given) {
    if (COMMA.matcher(given).matches()) {
      throw new QuantityFault("commas are not read; write the decimal point as in 2.5");
    }
    if (OCTAL_LOOK.matcher(given).matches()) {
      throw new QuantityFault("a number does not begin with 0 unless a decimal point follows");
    }
  }

  private static boolean isMinus(String sign) {
    return sign.equals("-") || sign.equals("\u2212");
  }

  private static double magnitude(Matcher shape) {
    if (shape.group("whole") != null) {
      return Double.parseDouble(shape.group("whole"))
          + fraction(shape.group("num"), shape.group("den"));
    }
    if (shape.group("onlyNum") != null) {
      return fraction(shape.group("onlyNum"), shape.group("onlyDen"));
    }
    return Double.parseDouble(shape.group("decimal"));
  }

  private static double fraction(String num, String den) {
    double divisor = Double.parseDouble(den);
    if (divisor == 0) {
      throw new QuantityFault("a fraction cannot have 0 below the line");
    }
    return Double.parseDouble(num) / divisor;
  }

  private static Unit unitOf(String written, Unit target, Optional<Unit> bare) {
    if (written == null || written.isBlank()) {
      return bare.orElseThrow(
          () -> new QuantityFault("it has no unit; write one, such as " + target.symbol()));
    }
    Unit unit =
        Unit.named(written)
            .orElseThrow(
                () -> new QuantityFault("\"%s\" is no unit known here".formatted(written.strip())));
    if (unit.dimension().equals(target.dimension())) {
      return unit;
    }
    throw notMeasured(unit, target);
  }
}
