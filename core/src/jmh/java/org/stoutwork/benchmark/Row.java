package org.stoutwork.benchmark;

import java.util.List;
import java.util.Locale;

/**
 * One line of the table of ratios.
 *
 * @param id short name
 * @param what what is timed against what
 * @param floor ratio below which a change should not land
 * @param target ratio that a release should reach
 * @param stretch ratio nearer the limit of the hardware
 */
record Row(String id, String what, double floor, double target, double stretch) {

  /** Prints the line for a baseline and our own time; repeats nothing, marks noise. */
  String line(Contest.Times baseline, Contest.Times own) {
    double ratio = baseline.median() / own.median();
    double minima = baseline.best() / own.best();
    String level =
        ratio >= stretch
            ? "stretch"
            : ratio >= target ? "target" : ratio >= floor ? "floor" : "below floor";
    boolean noisy = Math.max(baseline.noise(), own.noise()) > 1.6;
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.4g us | %.4g us | %.3gx | %.3gx | %s | %.2f / %.2f%s |",
        id,
        what,
        baseline.median() / 1000,
        own.median() / 1000,
        ratio,
        minima,
        level,
        baseline.noise(),
        own.noise(),
        noisy ? " noisy" : "");
  }

  static String head() {
    return String.join(
        "\n",
        List.of(
            "| row | what | baseline, median | own, median | ratio | ratio of minima | reached"
                + " | p75/min of both |",
            "| --- | --- | --- | --- | --- | --- | --- | --- |"));
  }
}
