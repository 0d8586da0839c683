package org.stoutwork.report.file.field;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Density;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.LineLoad;
import org.stoutwork.quantity.Mass;
import org.stoutwork.quantity.Moment;
import org.stoutwork.quantity.RotationalStiffness;
import org.stoutwork.quantity.Stress;
import org.stoutwork.report.file.tree.ShortNumber;

/** The kinds of scalar that carry a unit, without range; narrow them where they are asked for. */
public final class Quantities {

  private static final Pattern PERCENT = Pattern.compile("(.*?)\\s*%(\\s*MC)?");

  private Quantities() {}

  /** A length. */
  public static QuantityKind<Length> length() {
    return QuantityKind.of("a length such as `120 mm` or `4 3/4 in`", Length.UNIT, Length::ofMm);
  }

  /** A mass. */
  public static QuantityKind<Mass> mass() {
    return QuantityKind.of("a mass such as `90 kg` or `200 lb`", Mass.UNIT, Mass::ofKg);
  }

  /** A force. */
  public static QuantityKind<Force> force() {
    return QuantityKind.of("a force such as `900 N` or `200 lbf`", Force.UNIT, Force::ofNewtons);
  }

  /** A stress, strength, modulus or pressure. */
  public static QuantityKind<Stress> stress() {
    return QuantityKind.of(
        "a stress such as `24 MPa`, `11 GPa` or `1600 psi`", Stress.UNIT, Stress::ofMpa);
  }

  /** A line load. */
  public static QuantityKind<LineLoad> lineLoad() {
    return QuantityKind.of(
        "a line load such as `1.2 kN/m` or `80 lbf/ft`", LineLoad.UNIT, LineLoad::ofNPerMm);
  }

  /** A moment. */
  public static QuantityKind<Moment> moment() {
    return QuantityKind.of(
        "a moment such as `150 N·m` or `110 lbf·ft`", Moment.UNIT, Moment::ofNmm);
  }

  /** A stiffness against rotation. */
  public static QuantityKind<RotationalStiffness> rotationalStiffness() {
    return QuantityKind.of(
        "a stiffness such as `15 kN·m/rad`",
        RotationalStiffness.UNIT,
        RotationalStiffness::ofNmmPerRad);
  }

  /** A density. */
  public static QuantityKind<Density> density() {
    return QuantityKind.of(
        "a density such as `680 kg/m³` or `42 lb/ft³`", Density.UNIT, Density::ofKgPerM3);
  }

  /** An angle. */
  public static QuantityKind<Angle> angle() {
    return QuantityKind.of("an angle such as `6 deg`", Angle.UNIT, Angle::ofRad);
  }

  /**
   * A percentage, written with its sign so that 0.12 and 12 are never confused.
   *
   * @param noun what it is, with its article
   * @param min smallest, in percent
   * @param max largest, in percent
   * @return the kind; its values are in percent
   */
  public static Kind<Double> percent(String noun, double min, double max) {
    Range range = Range.between(min, max);
    return Kind.of(
        noun + " from " + ShortNumber.of(min) + " % to " + ShortNumber.of(max) + " %",
        text -> readPercent(text, range),
        value -> ShortNumber.of(value) + " %");
  }

  private static double readPercent(String text, Range range) throws NotUnderstood {
    Matcher shape = PERCENT.matcher(text);
    if (!shape.matches()) {
      throw new NotUnderstood("write the percent sign", percentQuestion(text, range));
    }
    double value = numberOf(shape.group(1));
    if (!range.contains(value)) {
      throw new NotUnderstood("", "");
    }
    return value;
  }

  private static double numberOf(String text) throws NotUnderstood {
    try {
      return NumberText.read(text);
    } catch (NotUnderstood e) {
      String repaired = e.suggestion().replaceFirst("mean (.*)\\?$", "mean \"$1 %\"?");
      throw new NotUnderstood(e.getMessage(), repaired);
    }
  }

  private static String percentQuestion(String text, Range range) {
    try {
      boolean fits = range.contains(NumberText.read(text));
      return fits ? "Did you mean \"" + text + " %\"?" : "";
    } catch (NotUnderstood e) {
      return "";
    }
  }
}
