package org.stoutwork.joint.regression;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * A published series of joint tests.
 *
 * @param title what was tested
 * @param mean of the series
 * @param deviation standard deviation, same unit
 * @param unit of both
 * @param count number of joints
 * @param source paper and place
 */
public record TestSeries(
    String title, double mean, double deviation, Unit unit, int count, Source source) {

  private static final Source OAK =
      Source.published(
          "Eckelman, Uysal, Haviarova, BioResources 11(3) 2016, 7162-7171", "abstract");

  /** T joints of red oak, rail 63.5 × 22.2, tenon 38 × 32 × 9.5 mm, PVA glue. */
  public static final TestSeries RED_OAK =
      new TestSeries("red oak T joints", 353, 48, Unit.N_M, 215, OAK);

  /** The same of white oak. */
  public static final TestSeries WHITE_OAK =
      new TestSeries("white oak T joints", 358, 62, Unit.N_M, 140, OAK);

  private static final Formula LOWER =
      Formula.define("X_low")
          .meaning("value that few joints fall short of")
          .where("X", "mean", Unit.ONE)
          .where("k", "1.645 for one in twenty; more where tests are few", Unit.ONE)
          .where("s", "standard deviation", Unit.ONE)
          .as("X - k*s")
          .source(Source.derived("normal distribution"));

  /** Coefficient of variation. */
  public double variation() {
    return deviation / mean;
  }

  /** Mean less k standard deviations, in the unit of the series. */
  public double lower(Pad pad, double k) {
    return pad.take(LOWER, mean, k, deviation);
  }
}
