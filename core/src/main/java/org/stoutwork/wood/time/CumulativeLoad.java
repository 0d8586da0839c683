package org.stoutwork.wood.time;

/**
 * A load that comes again and again, such as a machine in use or a stack left on the top: what
 * counts is the time that it acts in all.
 *
 * @param hoursPerDay at full value, above 0 and up to 24
 * @param daysPerYear above 0 and up to 365.25
 * @param years above 0
 */
public record CumulativeLoad(double hoursPerDay, double daysPerYear, double years) {

  private static final double HOURS_PER_WEEK = 7 * 24;
  private static final double HOURS_PER_YEAR = 365.25 * 24;
  private static final double HOURS_OF_MINUTES = 0.5;

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public CumulativeLoad {
    if (!(hoursPerDay > 0 && hoursPerDay <= 24)
        || !(daysPerYear > 0 && daysPerYear <= 365.25)
        || !(years > 0 && Double.isFinite(years))) {
      throw new IllegalArgumentException(
          "a load acts above 0 to 24 h a day, above 0 to 365.25 days a year, for above 0 years;"
              + " it was %s h, %s days, %s years".formatted(hoursPerDay, daysPerYear, years));
    }
  }

  /** Hours at full value in all. */
  public double hours() {
    return hoursPerDay * daysPerYear * years;
  }

  /** The duration class of that time (EN 1995-1-1 Table 2.1; limits from memory). */
  public DurationClass durationClass() {
    double hours = hours();
    if (hours > 10 * HOURS_PER_YEAR) {
      return DurationClass.PERMANENT;
    }
    if (hours > HOURS_PER_YEAR / 2) {
      return DurationClass.LONG;
    }
    if (hours > HOURS_PER_WEEK) {
      return DurationClass.MEDIUM;
    }
    return hours > HOURS_OF_MINUTES ? DurationClass.SHORT : DurationClass.INSTANTANEOUS;
  }
}
