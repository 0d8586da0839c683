package org.stoutwork.reference.joints;

import java.util.Locale;

/** Ratios of one thing over another, summed up: geometric mean, scatter factor, extremes. */
final class Scatter {

  private final String title;
  private int n;
  private double sum;
  private double squares;
  private double least = Double.POSITIVE_INFINITY;
  private double most = Double.NEGATIVE_INFINITY;

  Scatter(String title) {
    this.title = title;
  }

  Scatter add(double ratio) {
    double log = Math.log(ratio);
    n++;
    sum += log;
    squares += log * log;
    least = Math.min(least, ratio);
    most = Math.max(most, ratio);
    return this;
  }

  int count() {
    return n;
  }

  double bias() {
    return Math.exp(sum / n);
  }

  /** One standard deviation of the logarithm, as a factor. */
  double factor() {
    double mean = sum / n;
    return Math.exp(Math.sqrt(Math.max(0, (squares - n * mean * mean) / (n - 1))));
  }

  /** Coefficient of variation of a log-normal with that scatter. */
  double variation() {
    double s = Math.log(factor());
    return Math.sqrt(Math.exp(s * s) - 1);
  }

  double least() {
    return least;
  }

  double most() {
    return most;
  }

  String line() {
    return String.format(
        Locale.ROOT,
        "%-58s n %2d  bias %.3f  CoV %.3f  range %.2f to %.2f",
        title,
        n,
        bias(),
        n > 1 ? variation() : 0,
        least,
        most);
  }
}
