package org.stoutwork.report.drawing.draughting;

import java.util.List;
import java.util.Optional;

/**
 * Where the figure of a dimension stands along its row: over the line where there is room between
 * the extension lines, else beyond one of its ends, so far out that no extension line crosses it.
 *
 * @param middle of the figure along the row, mm
 * @param width of the figure, mm
 * @param inside whether it stands over the line between the ends
 * @param end of the dimension beyond which it stands, where it stands outside
 */
record FigurePlace(double middle, double width, boolean inside, double end) {

  /** How far a dimension line runs past its ends, mm. */
  static final double PAST = 1.5;

  private static final double TICK = 1.1;
  private static final double GAP = 0.8;
  private static final double CLEAR = 0.5;

  /**
   * The place of a figure.
   *
   * @param low end of the dimension, mm
   * @param high end of the dimension, mm
   * @param width of the figure, mm
   * @param sense +1 if a figure that does not fit goes rather beyond the high end, else −1
   * @param lines where extension lines of others cross the row, mm
   * @param spans from where to where others want the row; kept clear of where there is a choice
   */
  static FigurePlace of(
      double low, double high, double width, int sense, List<Double> lines, List<double[]> spans) {
    Optional<Double> over = over(low + TICK, high - TICK, width, lines);
    if (over.isPresent()) {
      return new FigurePlace(over.get(), width, true, 0);
    }
    double up = beyond(high, width, 1, lines);
    double down = beyond(low, width, -1, lines);
    boolean nearer = sense > 0 ? up - high <= low - down + 1e-9 : up - high < low - down - 1e-9;
    boolean upFree = isFree(up, width, spans);
    boolean upward = upFree == isFree(down, width, spans) ? nearer : upFree;
    return new FigurePlace(upward ? up : down, width, false, upward ? high : low);
  }

  private static boolean isFree(double middle, double width, List<double[]> spans) {
    return spans.stream().allMatch(s -> Math.abs(2 * middle - s[0] - s[1]) >= width + s[1] - s[0]);
  }

  /** The middle nearest to the middle of the dimension at which the figure meets no line. */
  private static Optional<Double> over(double from, double to, double width, List<Double> lines) {
    double half = width / 2;
    double wanted = (from + to) / 2;
    double best = Double.NaN;
    for (int i = -1; i < 2 * lines.size(); i++) {
      // The middle itself, and close before or behind each line.
      double tried =
          i < 0 ? wanted : lines.get(i / 2) + (i % 2 == 0 ? -1 : 1) * (half + CLEAR + 1e-9);
      boolean fits = tried - half >= from - 1e-9 && tried + half <= to + 1e-9;
      boolean nearer = !(Math.abs(tried - wanted) >= Math.abs(best - wanted));
      if (fits && nearer && isClear(tried, half, lines)) {
        best = tried;
      }
    }
    return Double.isNaN(best) ? Optional.empty() : Optional.of(best);
  }

  private static boolean isClear(double middle, double half, List<Double> lines) {
    return lines.stream().allMatch(l -> Math.abs(l - middle) >= half + CLEAR);
  }

  /** The first middle beyond an end at which the figure meets no line. */
  private static double beyond(double end, double width, int sense, List<Double> lines) {
    double half = width / 2;
    double middle = end + sense * (PAST + GAP + half);
    while (!isClear(middle, half, lines)) {
      double at = middle;
      double farthest =
          lines.stream()
              .filter(l -> Math.abs(l - at) < half + CLEAR)
              .mapToDouble(l -> sense * l)
              .max()
              .orElseThrow();
      middle = sense * (farthest + half + CLEAR + 1e-9);
    }
    return middle;
  }

  /** The lower end of the figure. */
  double low() {
    return middle - width / 2;
  }

  /** The upper end of the figure. */
  double high() {
    return middle + width / 2;
  }

  /** The line that leads from the dimension to a figure farther out, from where to where. */
  Optional<double[]> line() {
    if (inside) {
      return Optional.empty();
    }
    double to = middle > end ? low() - GAP : high() + GAP;
    return Math.abs(to - end) <= PAST + 1e-6
        ? Optional.empty()
        : Optional.of(new double[] {end, to});
  }
}
