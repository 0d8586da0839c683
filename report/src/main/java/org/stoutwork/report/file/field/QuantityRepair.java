package org.stoutwork.report.file.field;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.quantity.QuantityFault;
import org.stoutwork.quantity.QuantityText;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.tree.Nearest;
import org.stoutwork.report.file.tree.Quote;

/** Offers what somebody probably meant by a quantity that cannot be read. */
final class QuantityRepair {

  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("([-+]?\\d[\\d.,\\s/-]*?)\\s*([^\\d\\s.,/-].*)?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,(\\d{1,2}|\\d{4,})");
  private static final int LONGEST = 40;

  private QuantityRepair() {}

  static String question(String text, Unit target, Optional<Unit> bare) {
    if (text.length() > LONGEST) {
      return "";
    }
    Matcher shape = NUMBER_THEN_UNIT.matcher(text.strip());
    if (!shape.matches()) {
      return "";
    }
    String number = shape.group(1);
    if (DECIMAL_COMMA.matcher(number).matches()) {
      number = number.replace(',', '.');
    }
    String written = shape.group(2) == null ? "" : shape.group(2);
    String repaired = (number + " " + unit(written, target, bare)).strip();
    return isReadable(repaired, target, bare) && !repaired.equals(text.strip())
        ? "Did you mean " + Quote.of(repaired) + "?"
        : "";
  }

  /** The unit as written if it fits, else the nearest that fits, else nothing. */
  private static String unit(String written, Unit target, Optional<Unit> bare) {
    if (written.isEmpty()) {
      return bare.isPresent() ? "" : target.symbol();
    }
    boolean fits =
        Unit.named(written).filter(u -> u.dimension().equals(target.dimension())).isPresent();
    return fits ? written : Nearest.to(written, symbols(target)).orElse("");
  }

  private static List<String> symbols(Unit target) {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.dimension().equals(target.dimension()))
        .map(Unit::symbol)
        .toList();
  }

  private static boolean isReadable(String text, Unit target, Optional<Unit> bare) {
    try {
      QuantityText.read(text, target, bare);
      return true;
    } catch (QuantityFault e) {
      return false;
    }
  }
}
