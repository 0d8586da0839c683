package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The dividing lines of one direction while they are chosen: fixed places and a wished size. */
final class PanelMeshLines {
  private static final double GROWTH = 0.4;
  private static final int SAMPLES = 256;

  private final double length;
  private final double usual;
  private final List<Double> obligatory = new ArrayList<>();
  private final List<Double> wished = new ArrayList<>();
  private final List<double[]> finer = new ArrayList<>();

  PanelMeshLines(double length, double usual) {
    this.length = length;
    this.usual = usual;
    must(0);
    must(length);
  }

  double length() {
    return length;
  }

  double usual() {
    return usual;
  }

  /** A line must run here. */
  void must(double at) {
    obligatory.add(at);
  }

  /** A line would be good here, unless another one is close. */
  void wish(double at) {
    wished.add(at);
  }

  /** Cells near this place should not be larger than {@code size}. */
  void finerAt(double at, double size) {
    finer.add(new double[] {at, size});
  }

  /**
   * The lines, each part between fixed places being divided into {@code times} the number of cells
   * of the coarsest mesh; finer meshes contain the lines of coarser ones.
   */
  double[] divide(int times) {
    double[] stops = stops();
    List<Double> lines = new ArrayList<>();
    lines.add(stops[0]);
    for (int k = 0; k + 1 < stops.length; k++) {
      divide(stops[k], stops[k + 1], times, lines);
    }
    return lines.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private double[] stops() {
    double[] sorted = obligatory.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    List<Double> kept = new ArrayList<>();
    for (double at : sorted) {
      if (kept.isEmpty() || at - kept.get(kept.size() - 1) > 1e-7 * length) {
        kept.add(at);
      }
    }
    for (double at : wished) {
      double gap = Math.min(size(at) / 3, usual / 10);
      if (at > 0 && at < length && kept.stream().allMatch(k -> Math.abs(k - at) > gap)) {
        kept.add(at);
      }
    }
    return kept.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private double size(double at) {
    double size = usual;
    for (double[] f : finer) {
      size = Math.min(size, f[1] + GROWTH * Math.abs(at - f[0]));
    }
    return size;
  }

  /** Cells hold equal parts of the integral of 1 / size, found by the trapezium rule. */
  private void divide(double from, double to, int times, List<Double> lines) {
    double[] sum = new double[SAMPLES + 1];
    double step = (to - from) / SAMPLES;
    for (int s = 1; s <= SAMPLES; s++) {
      double before = 1 / size(from + (s - 1) * step);
      double after = 1 / size(from + s * step);
      sum[s] = sum[s - 1] + step * (before + after) / 2;
    }
    int count = times * (int) Math.max(1, Math.ceil(sum[SAMPLES] - 1e-6));
    for (int k = 1; k < count; k++) {
      double target = sum[SAMPLES] * k / count;
      int s = Arrays.binarySearch(sum, target);
      int low = s >= 0 ? Math.min(s, SAMPLES - 1) : -s - 2;
      double part = (target - sum[low]) / (sum[low + 1] - sum[low]);
      lines.add(from + (low + part) * step);
    }
    lines.add(to);
  }
}
