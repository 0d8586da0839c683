package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.linear.LdlLanes;

/**
 * Many variants of one frame in which every member, tie spring and support spring may be stiffer or
 * softer by a factor of its own: a full factorisation each, {@link LdlLanes#WIDTH} at a time, order
 * and analysis kept. Immutable; each thread brings its own {@link Workspace}, and a variant's
 * answer does not depend on which others share its batch.
 *
 * <p>A member's factor multiplies E and G together, and the springs at its ends with them.
 * Solutions are not refined; frames are expected to be far from loose.
 */
public final class StiffnessSweep {
  private final PreparedFrame frame;
  private final int cases;
  private final int parts;
  private final List<Output> outputs = new ArrayList<>();

  /** Per part: entries of the matrix and the weights of its stiffness there. */
  private final int[][] entry;

  private final double[][] weight;
  private final double[][] force;

  /** A response: constant by case, plus a sum over reduced unknowns, times a part's factor. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  private record Output(double[] constant, int[] unknown, double[] weight, int part) {}

  private StiffnessSweep(
      PreparedFrame frame, List<LoadCase> loadCases, List<? extends Response> responses) {
    this.frame = frame;
    this.cases = loadCases.size();
    List<Element> elements = frame.system().elements();
    this.parts = elements.size();
    Elimination elimination = frame.system().elimination();
    LdlLanes places = lanes();
    this.entry = new int[parts][];
    this.weight = new double[parts][];
    for (int e = 0; e < parts; e++) {
      scatter(e, elements.get(e), elimination, places);
    }
    List<Loading> loadings = SpringSweep.loadings(frame, loadCases);
    this.force = new double[cases][];
    for (int c = 0; c < cases; c++) {
      force[c] = elimination.gather(loadings.get(c).forces());
    }
    new Readings(frame.layout(), responses);
    responses.forEach(response -> outputs.add(output(response, loadings)));
  }

  /**
   * Prepares a sweep.
   *
   * @param cases load cases
   * @param responses displacements, internal forces and reactions of spring supports
   * @throws IllegalArgumentException for one-way contacts, prescribed displacements, unknown names
   *     or another kind of response
   */
  public static StiffnessSweep of(
      PreparedFrame frame, List<LoadCase> cases, List<? extends Response> responses) {
    SpringSweep.refuseContacts(frame);
    if (frame.layout().equations.given.stream().anyMatch(v -> v != 0)) {
      throw new IllegalArgumentException(
          "prescribed displacements cannot be swept here; solve each variant by itself");
    }
    return new StiffnessSweep(frame, cases, responses);
  }

  private LdlLanes lanes() {
    return new LdlLanes(frame.system().matrix(), frame.system().factor().order());
  }

  private void scatter(int e, Element element, Elimination elimination, LdlLanes places) {
    int[] unknowns = element.unknowns();
    double[] k = element.stiffness();
    List<Integer> at = new ArrayList<>();
    List<Double> by = new ArrayList<>();
    for (int a = 0; a < unknowns.length; a++) {
      int[] rows = elimination.targets(unknowns[a]);
      double[] rowFactors = elimination.factors(unknowns[a]);
      for (int b = 0; b < unknowns.length; b++) {
        int[] columns = elimination.targets(unknowns[b]);
        double[] columnFactors = elimination.factors(unknowns[b]);
        for (int p = 0; p < rows.length; p++) {
          for (int q = 0; q < columns.length; q++) {
            double v = rowFactors[p] * k[a * unknowns.length + b] * columnFactors[q];
            if (rows[p] <= columns[q] && v != 0) {
              at.add(places.entry(rows[p], columns[q]));
              by.add(v);
            }
          }
        }
      }
    }
    entry[e] = at.stream().mapToInt(Integer::intValue).toArray();
    weight[e] = by.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private Output output(Response response, List<Loading> loadings) {
    double[] row = new double[frame.layout().equations.unknowns()];
    double[] constant = new double[cases];
    int part = -1;
    if (response instanceof Response.Displacement d) {
      row[6 * frame.layout().vertices.get(d.node()) + d.direction().index()] = 1;
    } else if (response instanceof Response.Internal in) {
      Beam beam = frame.layout().beams.get(in.member());
      part = frame.system().elements().indexOf(beam);
      for (int i = 0; i < 12; i++) {
        double[] unit = new double[12];
        unit[i] = 1;
        row[beam.unknowns()[i]] +=
            new MemberResult(beam.state(unit, null)).along(in.force()).at(in.at());
      }
      for (int c = 0; c < cases; c++) {
        constant[c] =
            new MemberResult(beam.state(new double[12], loadings.get(c).span(beam)))
                .along(in.force())
                .at(in.at());
      }
    } else if (response instanceof Response.Reaction r) {
      FrameSolver.Grip grip = grip(r);
      part = grip.number();
      row[6 * frame.layout().vertices.get(r.node()) + r.direction().index()] = -grip.stiffness();
    } else {
      throw new IllegalArgumentException("this sweep does not read " + response);
    }
    double[] reduced = frame.system().elimination().gather(row);
    int[] unknown = new int[reduced.length];
    double[] by = new double[reduced.length];
    int n = 0;
    for (int i = 0; i < reduced.length; i++) {
      if (reduced[i] != 0) {
        unknown[n] = i;
        by[n++] = reduced[i];
      }
    }
    return new Output(constant, Arrays.copyOf(unknown, n), Arrays.copyOf(by, n), part);
  }

  private FrameSolver.Grip grip(Response.Reaction r) {
    for (FrameSolver.Grip grip : frame.layout().grips) {
      if (grip.node().equals(r.node())
          && grip.direction() == r.direction()
          && grip.kind() == FrameSolver.Grip.Kind.SPRING) {
        return grip;
      }
    }
    throw new IllegalArgumentException(
        "this sweep reads reactions of spring supports only; node '"
            + r.node()
            + "' is fixed "
            + r.direction().inWords());
  }

  /** What each factor belongs to, in order: the name of a member, tie or supported node. */
  public List<String> parts() {
    return frame.system().elements().stream().map(Element::part).toList();
  }

  /** Storage for one thread. */
  public Workspace workspace() {
    return new Workspace(lanes(), parts, frame.system().matrix().size(), outputs.size(), cases);
  }

  /** One thread's storage: factors of a batch before solving, its answers after. */
  public static final class Workspace {
    private final LdlLanes lanes;
    private final double[][] factor;
    private final double[][] x;
    private final double[][][] value;

    private Workspace(LdlLanes lanes, int parts, int unknowns, int outputs, int cases) {
      this.lanes = lanes;
      this.factor = new double[parts][LdlLanes.WIDTH];
      this.x = new double[unknowns][LdlLanes.WIDTH];
      this.value = new double[outputs][cases][LdlLanes.WIDTH];
      for (double[] f : factor) {
        Arrays.fill(f, 1);
      }
    }

    /** Sets a part's factor, positive, in one variant of the batch. */
    public void factor(int part, int lane, double f) {
      factor[part][lane] = f;
    }

    /** A response of one variant; meaningless where {@link StiffnessSweep#loose} says so. */
    public double value(int response, int loadCase, int lane) {
      return value[response][loadCase][lane];
    }
  }

  /** Solves a batch of variants. Allocates nothing. */
  public void solve(Workspace w) {
    w.lanes.clear();
    for (int e = 0; e < parts; e++) {
      int[] at = entry[e];
      for (int k = 0; k < at.length; k++) {
        w.lanes.add(at[k], weight[e][k], w.factor[e]);
      }
    }
    w.lanes.factor();
    for (int c = 0; c < cases; c++) {
      for (int i = 0; i < w.x.length; i++) {
        Arrays.fill(w.x[i], force[c][i]);
      }
      w.lanes.solve(w.x);
      for (int o = 0; o < outputs.size(); o++) {
        read(outputs.get(o), w, w.value[o][c], c);
      }
    }
  }

  private static void read(Output output, Workspace w, double[] value, int c) {
    Arrays.fill(value, 0);
    for (int k = 0; k < output.unknown().length; k++) {
      double by = output.weight()[k];
      double[] x = w.x[output.unknown()[k]];
      for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
        value[lane] += by * x[lane];
      }
    }
    for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
      double f = output.part() < 0 ? 1 : w.factor[output.part()][lane];
      value[lane] = value[lane] * f + output.constant()[c];
    }
  }

  /** What moves freely in one variant of the last batch, in words, or null. */
  public String loose(Workspace w, int lane) {
    int reduced = w.lanes.failedUnknown(lane);
    if (reduced < 0) {
      return null;
    }
    int unknown = frame.system().elimination().unknownOf(reduced);
    return "'"
        + frame.system().equations().vertexOf(unknown)
        + "' "
        + Direction.of(unknown % 6).inWords();
  }
}
