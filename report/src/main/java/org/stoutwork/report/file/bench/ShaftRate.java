package org.stoutwork.report.file.bench;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.NotUnderstood;
import org.stoutwork.report.file.field.NumberText;

/** How fast a shaft turns, as machines' plates print it. */
final class ShaftRate {

  /** Turns per second. */
  static final Kind<Double> KIND =
      Kind.of(
          "a rate such as `3000 rpm` or `50 Hz`, above 0 and below 1000 Hz,",
          ShaftRate::read,
          hertz -> hertz + " Hz");

  private static final Pattern SHAPE = Pattern.compile("(\\S+)\\s*(Hz|rpm|/min|1/min)");
  private static final double FASTEST = 1000;

  private ShaftRate() {}

  private static Double read(String text) throws NotUnderstood {
    Matcher shape = SHAPE.matcher(text.strip());
    if (!shape.matches()) {
      throw new NotUnderstood("", "");
    }
    double number = NumberText.read(shape.group(1));
    double hertz = shape.group(2).equals("Hz") ? number : number / 60;
    if (!(hertz > 0 && hertz < FASTEST)) {
      throw new NotUnderstood("", "");
    }
    return hertz;
  }
}
