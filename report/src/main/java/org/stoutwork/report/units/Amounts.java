package org.stoutwork.report.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.quantity.Measure;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/**
 * Writes amounts in the units that a reader chose. Everything that goes in is in N, mm, MPa, rad or
 * kg. Immutable.
 */
public final class Amounts {

  private static final int DIGITS = Writing.USUAL_DIGITS;
  private static final double SMALL_MOMENT = 1000;
  private static final double IN_A_FOOT_POUND = 1355.8179483314004;
  private static final double THIRTY_SECOND = 25.4 / 32;
  private static final double EXACT = 0.02;
  private static final Pattern IN_PROSE =
      Pattern.compile(
          "(\\d+(?:\\.\\d+)?(?: × \\d+(?:\\.\\d+)?)*)[\\u00a0 ](mm|kN|N|kg)(?![\\p{L}\\p{N}·/²³⁴])");

  private static final double FINE_BELOW = 100;
  private static final double FINEST_BELOW = 2.54;
  private static final int PSI_DIGITS = 4;

  private final UnitSystem system;

  /** Amounts in a system of units. */
  public Amounts(UnitSystem system) {
    this.system = system;
  }

  /** The system of units. */
  public UnitSystem system() {
    return system;
  }

  private boolean si() {
    return system == UnitSystem.SI;
  }

  /** The unit of lengths. */
  public String lengthUnit() {
    return si() ? "mm" : "in";
  }

  /** A length without its unit, as on a dimension line. */
  public String bareLength(double mm) {
    return si() ? Writing.number(rounded(mm), 5) : inches(mm);
  }

  private static double rounded(double mm) {
    return Math.rint(mm * 10) / 10;
  }

  /** Whole thirty-seconds as a fraction, anything else as a decimal. */
  private static String inches(double mm) {
    long parts = Math.round(Math.abs(mm) / THIRTY_SECOND);
    if (Math.abs(parts * THIRTY_SECOND - Math.abs(mm)) > EXACT) {
      return Writing.number(Math.rint(mm / 25.4 * 100) / 100, 5);
    }
    long whole = parts / 32;
    long over = parts % 32;
    if (over == 0) {
      return (mm < 0 && whole > 0 ? "\u2212" : "") + whole;
    }
    long below = 32;
    while (over % 2 == 0) {
      over /= 2;
      below /= 2;
    }
    String fraction = over + "/" + below;
    return (mm < 0 ? "\u2212" : "") + (whole == 0 ? fraction : whole + "\u00a0" + fraction);
  }

  /** A length. */
  public String length(double mm) {
    return bareLength(mm) + "\u00a0" + lengthUnit();
  }

  /** Lengths joined by multiplication signs, the unit once. */
  public String size(double... mm) {
    List<String> parts = new ArrayList<>();
    for (double each : mm) {
      parts.add(bareLength(each));
    }
    return String.join("\u00a0×\u00a0", parts) + "\u00a0" + lengthUnit();
  }

  /** A movement or another small length, to three digits. */
  public String movement(double mm) {
    return si()
        ? Writing.with(mm, Unit.MM, DIGITS)
        : Writing.with(Unit.MM.convert(mm, Unit.IN), Unit.IN, DIGITS);
  }

  /** A mass. */
  public String mass(double kg) {
    return si()
        ? Writing.with(kg, Unit.KG, DIGITS)
        : Writing.with(Unit.KG.convert(kg, Unit.LB), Unit.LB, DIGITS);
  }

  /** A force. */
  public String force(double newtons) {
    return of(new Measure(newtons, Unit.N));
  }

  /** The unit of a sway stiffness. */
  public String swayStiffnessUnit() {
    return si() ? Unit.N_PER_MM.symbol() : Unit.LBF_PER_IN.symbol();
  }

  /** A sway stiffness in N/mm, without its unit. */
  public String bareSwayStiffness(double value) {
    return Writing.number(si() ? value : Unit.N_PER_MM.convert(value, Unit.LBF_PER_IN), DIGITS);
  }

  /** The unit of a joint's stiffness. */
  public String turningStiffnessUnit() {
    return si() ? Unit.KN_M_PER_RAD.symbol() : "kip·ft/rad";
  }

  /** A joint's stiffness in N·mm/rad, without its unit. */
  public String bareTurningStiffness(double value) {
    return Writing.number(value / (si() ? 1e6 : IN_A_FOOT_POUND * 1000), DIGITS);
  }

  /** Any measure, in a unit of its kind that reads well. */
  public String of(Measure measure) {
    Measure shown = shown(measure);
    return Writing.with(shown.value(), shown.unit(), DIGITS);
  }

  /** Any measure, with what it is a share of where it has no unit. */
  public String of(Measure measure, String share) {
    return of(measure) + (share.isEmpty() ? "" : " " + share);
  }

  /** A measure in inch-pound units where the reader wants them and it has any; else empty. */
  public String also(Measure measure) {
    Measure shown = shown(measure);
    return si() || shown.unit() == measure.unit()
        ? ""
        : Writing.with(shown.value(), shown.unit(), Writing.USUAL_DIGITS + 1);
  }

  /** Two measures of one kind, in one unit that is written once where both read well in it. */
  public String pair(Measure first, Measure second) {
    Measure b = shown(second);
    Unit unit = b.unit();
    double a = first.unit().convert(first.value(), unit);
    return Writing.number(a, DIGITS) + ", " + Writing.with(b.value(), unit, DIGITS);
  }

  /** A measure in the system's own unit of its kind. */
  public Measure shown(Measure measure) {
    Unit to = unitFor(measure);
    double value = measure.unit().convert(measure.value(), to);
    return new Measure(to == Unit.PSI ? rounded(value, PSI_DIGITS) : value, to);
  }

  /** Large figures to a few digits: a modulus is not known to one psi. */
  private static double rounded(double value, int digits) {
    return Math.abs(value) < Math.pow(10, digits)
        ? value
        : new BigDecimal(value).round(new MathContext(digits)).doubleValue();
  }

  private Unit unitFor(Measure m) {
    if (si()) {
      boolean large = m.unit() == Unit.N_MM && Math.abs(m.value()) >= SMALL_MOMENT;
      return large ? Unit.N_M : m.unit();
    }
    return switch (m.unit()) {
      case MM -> Unit.IN;
      case N, KN -> Unit.LBF;
      case N_MM, N_M, KN_M -> Unit.LBF_FT;
      case MPA -> Unit.PSI;
      case KG -> Unit.LB;
      case KG_PER_M3 -> Unit.LB_PER_FT3;
      case N_PER_MM -> Unit.LBF_PER_IN;
      default -> m.unit();
    };
  }

  /** A sentence in which lengths, forces and masses stand in SI units, in the reader's units. */
  public String inWords(String sentence) {
    if (si()) {
      return sentence;
    }
    Matcher matcher = IN_PROSE.matcher(sentence);
    return matcher.replaceAll(m -> converted(m.group(1).split(" × "), m.group(2)));
  }

  /** Several numbers before one unit, as in 74 × 17 × 64 mm. */
  private String converted(String[] values, String unit) {
    List<String> done = new ArrayList<>();
    for (String value : values) {
      done.add(converted(Double.parseDouble(value), unit));
    }
    for (int i = 0; i + 1 < done.size(); i++) {
      done.set(i, done.get(i).substring(0, done.get(i).indexOf('\u00a0')));
    }
    return String.join(" × ", done);
  }

  private String converted(double value, String unit) {
    return switch (unit) {
      case "mm" -> inchesInWords(value);
      case "kN" -> of(new Measure(value * 1000, Unit.N));
      case "N" -> of(new Measure(value, Unit.N));
      default -> mass(value);
    };
  }

  private static String inchesInWords(double mm) {
    double parts = mm < FINEST_BELOW ? 1000 : mm < FINE_BELOW ? 100 : 10;
    return Writing.with(Math.rint(mm / 25.4 * parts) / parts, Unit.IN, 5);
  }
}
