package org.stoutwork.analysis.element;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Vec3;

/**
 * All loads along one member, in its local axes: linear intensities between breaks, forces and
 * moments at the breaks.
 */
public final class SpanLoad {
  private record Point(double at, Vec3 force, Vec3 moment) {}

  private record Line(double from, double to, Vec3 start, Vec3 end) {}

  private final double[] breaks;
  private final double[][][] intensity;
  private final double[][] force;
  private final double[][] moment;
  private final double[] resultant;
  private final boolean none;

  private SpanLoad(double[] breaks, List<Point> points, List<Line> lines) {
    this.breaks = breaks;
    int pieces = breaks.length - 1;
    intensity = new double[3][pieces][2];
    force = new double[3][breaks.length];
    moment = new double[3][breaks.length];
    for (Line line : lines) {
      spread(line);
    }
    for (Point point : points) {
      int b = breakAt(point.at());
      double[] f = point.force().toArray();
      double[] m = point.moment().toArray();
      for (int i = 0; i < 3; i++) {
        force[i][b] += f[i];
        moment[i][b] += m[i];
      }
    }
    resultant = sumAboutStart();
    none = points.isEmpty() && lines.isEmpty();
  }

  /** Begins the loads of a beam. */
  public static Builder on(Beam beam) {
    return new Builder(beam);
  }

  /** Nothing at all on a member of the given length. */
  static SpanLoad none(double length) {
    return new SpanLoad(new double[] {0, length}, List.of(), List.of());
  }

  /**
   * The part of these loads between two places, as loads on a piece that begins at the first. A
   * point load just on a place belongs to the piece before it (at 0, to the first piece).
   */
  public SpanLoad slice(double from, double to) {
    double slack = 1e-9 * breaks[breaks.length - 1];
    List<Point> points = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    List<Double> places = new ArrayList<>(List.of(0.0, to - from));
    for (int b = 0; b < breaks.length; b++) {
      double x = breaks[b];
      boolean inside = x <= to + slack && (x > from + slack || (b == 0 && from <= slack));
      if (inside && hasPoint(b)) {
        double at = Math.min(Math.max(0, x - from), to - from);
        points.add(new Point(at, column(force, b), column(moment, b)));
        places.add(at);
      }
    }
    for (int k = 0; k + 1 < breaks.length; k++) {
      double a = Math.max(from, breaks[k]);
      double b = Math.min(to, breaks[k + 1]);
      if (b - a > slack && hasLine(k)) {
        lines.add(new Line(a - from, b - from, valueAt(k, a), valueAt(k, b)));
        places.addAll(List.of(a - from, b - from));
      }
    }
    return new SpanLoad(distinct(places, to - from), points, lines);
  }

  private boolean hasPoint(int b) {
    boolean any = false;
    for (int i = 0; i < 3; i++) {
      any |= force[i][b] != 0 || moment[i][b] != 0;
    }
    return any;
  }

  private boolean hasLine(int k) {
    boolean any = false;
    for (int i = 0; i < 3; i++) {
      any |= intensity[i][k][0] != 0 || intensity[i][k][1] != 0;
    }
    return any;
  }

  private static Vec3 column(double[][] values, int b) {
    return new Vec3(values[0][b], values[1][b], values[2][b]);
  }

  private Vec3 valueAt(int k, double x) {
    double[] q = new double[3];
    for (int i = 0; i < 3; i++) {
      q[i] = intensity[i][k][0] + intensity[i][k][1] * (x - breaks[k]);
    }
    return Vec3.of(q, 0);
  }

  private static double[] distinct(List<Double> places, double length) {
    double[] sorted = places.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[] kept = new double[sorted.length];
    int n = 0;
    for (double x : sorted) {
      if (n == 0 || x - kept[n - 1] > 1e-10 * length) {
        kept[n++] = x;
      }
    }
    kept[n - 1] = length;
    return java.util.Arrays.copyOf(kept, n);
  }

  private int breakAt(double x) {
    int best = 0;
    for (int b = 1; b < breaks.length; b++) {
      if (Math.abs(breaks[b] - x) < Math.abs(breaks[best] - x)) {
        best = b;
      }
    }
    return best;
  }

  private void spread(Line line) {
    int first = breakAt(line.from());
    int last = breakAt(line.to());
    double[] a = line.start().toArray();
    double[] b = line.end().toArray();
    for (int k = first; k < last; k++) {
      for (int i = 0; i < 3; i++) {
        double slope = (b[i] - a[i]) / (line.to() - line.from());
        intensity[i][k][0] += a[i] + slope * (breaks[k] - line.from());
        intensity[i][k][1] += slope;
      }
    }
  }

  private double[] sumAboutStart() {
    double[] w = new double[6];
    for (int i = 0; i < 3; i++) {
      double first = 0;
      for (int b = 0; b < breaks.length; b++) {
        w[i] += force[i][b];
        w[3 + i] += moment[i][b];
        first += force[i][b] * breaks[b];
      }
      for (int k = 0; k < breaks.length - 1; k++) {
        double l = breaks[k + 1] - breaks[k];
        double q = intensity[i][k][0];
        double s = intensity[i][k][1];
        double sum = q * l + s * l * l / 2;
        w[i] += sum;
        first += sum * breaks[k] + q * l * l / 2 + s * l * l * l / 3;
      }
      // x ex × F = x (Fy ez - Fz ey)
      if (i == 1) {
        w[5] += first;
      } else if (i == 2) {
        w[4] -= first;
      }
    }
    return w;
  }

  /** Force and moment about the start, local axes: six values. */
  public double[] resultant() {
    return resultant.clone();
  }

  double[] breaks() {
    return breaks;
  }

  /** True when there is no load at all. */
  boolean isNone() {
    return none;
  }

  Piecewise intensity(int axis, double factor) {
    return Piecewise.of(breaks, intensity[axis]).times(factor);
  }

  /** Intensity of one piece at a distance from its left break. */
  double intensityAt(int axis, int piece, double x) {
    return intensity[axis][piece][0] + intensity[axis][piece][1] * x;
  }

  /** Force at a break. */
  double force(int axis, int at) {
    return force[axis][at];
  }

  /** Moment at a break. */
  double moment(int axis, int at) {
    return moment[axis][at];
  }

  double[] negativeForces(int axis) {
    return negative(force[axis]);
  }

  double[] negativeMoments(int axis) {
    return negative(moment[axis]);
  }

  private static double[] negative(double[] values) {
    double[] negative = new double[values.length];
    for (int b = 0; b < values.length; b++) {
      negative[b] = -values[b];
    }
    return negative;
  }

  /** Collects loads; each may be multiplied by a factor. */
  public static final class Builder {
    private final Beam beam;
    private final double length;
    private final List<Point> points = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    private Builder(Beam beam) {
      this.beam = beam;
      this.length = beam.length();
    }

    /** Adds a force and a moment at one place. */
    public Builder add(double factor, Load.OnMemberPoint load) {
      check(load.at());
      Vec3 f = local(load.force(), load.axes()).times(factor);
      Vec3 m = local(load.moment(), load.axes()).times(factor);
      points.add(new Point(Math.min(load.at(), length), f, m));
      return this;
    }

    /** Adds a line load. */
    public Builder add(double factor, Load.OnMemberLine load) {
      double to = Double.isInfinite(load.to()) ? length : load.to();
      check(to);
      check(load.from());
      if (to > load.from()) {
        Vec3 start = local(load.start(), load.axes()).times(factor);
        Vec3 end = local(load.end(), load.axes()).times(factor);
        lines.add(new Line(load.from(), Math.min(to, length), start, end));
      }
      return this;
    }

    /** Adds everything that another record of loads on the same beam holds. */
    public Builder add(double factor, SpanLoad other) {
      for (int b = 0; b < other.breaks.length; b++) {
        if (other.hasPoint(b)) {
          Vec3 f = column(other.force, b).times(factor);
          points.add(new Point(other.breaks[b], f, column(other.moment, b).times(factor)));
        }
      }
      for (int k = 0; k + 1 < other.breaks.length; k++) {
        if (other.hasLine(k)) {
          double from = other.breaks[k];
          double to = other.breaks[k + 1];
          Vec3 start = other.valueAt(k, from).times(factor);
          lines.add(new Line(from, to, start, other.valueAt(k, to).times(factor)));
        }
      }
      return this;
    }

    /** Adds an even line load over the whole length, global axes, N/mm. */
    public Builder even(Vec3 global) {
      Vec3 q = beam.axes().toLocal(global);
      lines.add(new Line(0, length, q, q));
      return this;
    }

    private Vec3 local(Vec3 v, Load.Axes axes) {
      return axes == Load.Axes.GLOBAL ? beam.axes().toLocal(v) : v;
    }

    private void check(double x) {
      if (x > length * (1 + 1e-9)) {
        throw new IllegalArgumentException(
            "a load on member '"
                + beam.part()
                + "' lies at "
                + x
                + " mm, but its flexible part is only "
                + length
                + " mm long");
      }
    }

    /** True when nothing has been added. */
    public boolean isEmpty() {
      return points.isEmpty() && lines.isEmpty();
    }

    /** The loads in one record. */
    public SpanLoad build() {
      List<Double> places = new ArrayList<>(List.of(0.0, length));
      points.forEach(p -> places.add(p.at()));
      lines.forEach(l -> places.addAll(List.of(l.from(), l.to())));
      return new SpanLoad(distinct(places, length), points, lines);
    }
  }
}
