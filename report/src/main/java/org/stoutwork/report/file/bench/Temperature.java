package org.stoutwork.report.file.bench;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.NotUnderstood;
import org.stoutwork.report.file.field.NumberText;

/** The temperature of a room. */
final class Temperature {

  private static final Pattern SHAPE = Pattern.compile("(\\S+?)\\s*°?\\s*([CF])");
  private static final double COLDEST = 0;
  private static final double HOTTEST = 60;

  /** Degrees Celsius. */
  static final Kind<Double> KIND =
      Kind.of(
          "a temperature such as `18 °C` or `65 °F`, from 0 °C to 60 °C,",
          Temperature::read,
          celsius -> celsius + " °C");

  private Temperature() {}

  private static Double read(String text) throws NotUnderstood {
    Matcher shape = SHAPE.matcher(text.strip());
    if (!shape.matches()) {
      throw new NotUnderstood("", "");
    }
    double number = NumberText.read(shape.group(1));
    double celsius = shape.group(2).equals("C") ? number : (number - 32) / 1.8;
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      throw new NotUnderstood("", "");
    }
    return celsius;
  }
}
