package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.SpanLoad;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.linear.FlexibilityUpdate;

/**
 * Many variants of one frame that differ in one named section only: responses chosen beforehand,
 * under load cases chosen beforehand, from one factorisation. Each member of the section adds six
 * equations to a small dense system ({@link FlexibilityUpdate}). Self-weight follows the section.
 *
 * <p>Where the small system is ill-conditioned (see {@link #LIMIT}) the variant is factorised
 * afresh instead. Immutable; each thread brings its own {@link Workspace}.
 */
public final class SectionSweep {
  /**
   * A variant is updated only while {@link Workspace#smallestPivot} exceeds this; then rounding
   * grows by 10⁵ at most.
   */
  public static final double LIMIT = 1e-5;

  /**
   * Properties that change by more than this factor are answered afresh: differences lose digits.
   */
  public static final double WIDEST = 1000;

  private static final double HUGE = 1e200;

  private final PreparedFrame frame;
  private final String section;
  private final CrossSection old;
  private final List<LoadCase> cases;
  private final Readings readings;
  private final List<Beam> beams = new ArrayList<>();
  private final FlexibilityUpdate update;
  private final double[][] effect;

  /** Flexibility of beam b per unit of property p: [b][p][i][j]. */
  private final double[][][][] flexible;

  /** Tip motion under the loads along beam b per unit of property p: [b][c][p][i]. */
  private final double[][][][] tip;

  /** Forces at the ends of the beams, [6 b + i][c], and responses, [o][c], with the old section. */
  private final double[][] force;

  private final double[][] base;

  private SectionSweep(
      PreparedFrame frame, String section, List<LoadCase> cases, Readings readings) {
    this.frame = frame;
    this.section = section;
    this.old = frame.model().sections().get(section);
    this.cases = cases;
    this.readings = readings;
    List<JointSpring> places = new ArrayList<>();
    for (Beam beam : frame.layout().beams.values()) {
      if (beam.member().section().equals(section)) {
        beams.add(beam);
        for (Direction d : Direction.values()) {
          places.add(new JointSpring(beam.part(), JointSpring.End.END, d));
        }
      }
    }
    Slips slips = new Slips(frame, places, readings);
    this.effect = slips.effect;
    // The second half of the columns: the weight of the section's own members alone.
    List<Loading> loadings = new ArrayList<>(SpringSweep.loadings(frame, cases));
    cases.forEach(c -> loadings.add(ownWeight(c)));
    int columns = loadings.size();
    this.force = new double[places.size()][columns];
    this.base = new double[readings.size()][columns];
    solve(slips, loadings);
    this.flexible = new double[beams.size()][][][];
    this.tip = new double[beams.size()][columns][][];
    double[] own = new double[places.size()];
    double[] properties = properties(old, new double[6]);
    for (int b = 0; b < beams.size(); b++) {
      flexible[b] = flexibility(beams.get(b));
      for (int c = 0; c < columns; c++) {
        SpanLoad load = loadings.get(c).span(beams.get(b));
        tip[b][c] = load == null ? new double[6][6] : tips(beams.get(b), load);
      }
      for (int i = 0; i < 6; i++) {
        for (int p = 0; p < 6; p++) {
          own[6 * b + i] += properties[p] * flexible[b][p][i][i];
        }
      }
    }
    this.update = new FlexibilityUpdate(slips.resistance, own);
  }

  private void solve(Slips slips, List<Loading> loadings) {
    for (int c = 0; c < loadings.size(); c++) {
      boolean withGiven = c < cases.size();
      Readings.Motion motion = Readings.motion(frame, loadings.get(c), withGiven);
      for (int i = 0; i < force.length; i++) {
        force[i][c] = slips.force(i, motion);
      }
      double[] values = readings.of(motion);
      for (int o = 0; o < values.length; o++) {
        base[o][c] = values[o];
      }
    }
  }

  private Loading ownWeight(LoadCase loadCase) {
    List<Load> own = new ArrayList<>();
    for (Load load : loadCase.loads()) {
      if (load instanceof Load.SelfWeight weight) {
        for (Beam beam : beams) {
          Vec3 q = weight.direction().times(Loading.weightPerLength(beam));
          own.add(
              new Load.OnMemberLine(
                  beam.part(), 0, Double.POSITIVE_INFINITY, q, q, Load.Axes.GLOBAL));
        }
      }
    }
    return new Loading(frame.layout(), Combination.of(new LoadCase(loadCase.name(), own)));
  }

  /** The six numbers to which flexibility is proportional. */
  private static double[] properties(CrossSection s, double[] into) {
    into[0] = 1 / s.area();
    into[1] = 1 / s.iy();
    into[2] = 1 / s.iz();
    into[3] = 1 / s.j();
    into[4] = s.asy() == 0 ? 0 : 1 / s.asy();
    into[5] = s.asz() == 0 ? 0 : 1 / s.asz();
    return into;
  }

  /** A section that only one property lets deform. */
  private static CrossSection only(int property) {
    return new CrossSection(
        property == 0 ? 1 : HUGE,
        property == 1 ? 1 : HUGE,
        property == 2 ? 1 : HUGE,
        property == 3 ? 1 : HUGE,
        property == 4 ? 1 : 0,
        property == 5 ? 1 : 0);
  }

  private static double[][][] flexibility(Beam beam) {
    double[][][] f = new double[6][6][6];
    for (int p = 0; p < 6; p++) {
      for (int j = 0; j < 6; j++) {
        double[] unit = new double[6];
        unit[j] = 1;
        double[] motion = beam.cantileverTip(only(p), unit, null);
        for (int i = 0; i < 6; i++) {
          f[p][i][j] = motion[i];
        }
      }
    }
    return f;
  }

  private static double[][] tips(Beam beam, SpanLoad load) {
    double[][] tips = new double[6][];
    for (int p = 0; p < 6; p++) {
      tips[p] = beam.cantileverTip(only(p), new double[6], load);
    }
    return tips;
  }

  /**
   * Prepares a sweep.
   *
   * @param section name of the section to be varied
   * @param cases load cases; prescribed displacements of the model act in each
   * @param responses what will be read; not the deflection within a member of that section
   * @throws IllegalArgumentException for unknown names, such a deflection, or a frame with one-way
   *     contacts, whose answers do not add up
   */
  public static SectionSweep of(
      PreparedFrame frame,
      String section,
      List<LoadCase> cases,
      List<? extends Response> responses) {
    SpringSweep.refuseContacts(frame);
    if (!frame.model().sections().containsKey(section)) {
      throw new IllegalArgumentException("there is no section '" + section + "'");
    }
    Readings readings = new Readings(frame.layout(), responses);
    for (Response response : readings.responses()) {
      if (response instanceof Response.Deflection d
          && frame.model().members().get(d.member()).section().equals(section)) {
        throw new IllegalArgumentException(
            "the deflection within '"
                + d.member()
                + "' depends on the section that is varied; ask for the displacement of a node");
      }
    }
    return new SectionSweep(frame, section, List.copyOf(cases), readings);
  }

  /** Storage for one thread. */
  public Workspace workspace() {
    return new Workspace(
        update.work(cases.size()), new double[readings.size()][cases.size()], properties(old));
  }

  private static double[] properties(CrossSection s) {
    return properties(s, new double[6]);
  }

  /** One thread's storage and the answer of its last variant. */
  public static final class Workspace {
    private final FlexibilityUpdate.Work work;
    private final double[][] value;
    private final double[] before;
    private final double[] change = new double[6];
    private SpringSweep.State state;
    private Loose loose;

    private Workspace(FlexibilityUpdate.Work work, double[][] value, double[] before) {
      this.work = work;
      this.value = value;
      this.before = before;
    }

    /**
     * A response of the last variant.
     *
     * @param response place in the list of responses
     * @param loadCase place in the list of cases
     * @throws IllegalStateException when the last variant is loose
     */
    public double value(int response, int loadCase) {
      if (state == null || loose != null) {
        throw new IllegalStateException(loose == null ? "nothing solved yet" : loose.message());
      }
      return value[response][loadCase];
    }

    /** What moves freely in the last variant, or null. */
    public Loose loose() {
      return loose;
    }

    /** Smallest relative pivot of the last small system; see {@link SectionSweep#LIMIT}. */
    public double smallestPivot() {
      return work.smallestPivot();
    }
  }

  /** Answers one variant. Allocates nothing unless it has to factorise afresh. */
  public SpringSweep.State solve(CrossSection with, Workspace w) {
    properties(with, w.change);
    for (int p = 0; p < 6; p++) {
      w.change[p] -= w.before[p];
    }
    double more = with.area() / old.area() - 1;
    w.loose = null;
    fillChange(w);
    fillSide(w, more);
    boolean updated = isNear(w) && update.solve(w.work, LIMIT);
    w.state = updated ? SpringSweep.State.UPDATED : afresh(with, w);
    if (w.state == SpringSweep.State.UPDATED) {
      read(w, more);
    }
    return w.state;
  }

  private static boolean isNear(Workspace w) {
    boolean near = true;
    for (int p = 0; p < 6; p++) {
      double was = w.before[p];
      double is = was + w.change[p];
      // Without shear deformation, before or after, there is nothing to compare.
      near &= was == 0 || is == 0 || (is <= WIDEST * was && was <= WIDEST * is);
    }
    return near;
  }

  private void fillChange(Workspace w) {
    double[][] delta = w.work.change();
    for (int b = 0; b < flexible.length; b++) {
      for (int i = 0; i < 6; i++) {
        for (int j = 0; j < 6; j++) {
          double sum = 0;
          for (int p = 0; p < 6; p++) {
            sum += w.change[p] * flexible[b][p][i][j];
          }
          delta[6 * b + i][6 * b + j] = sum;
        }
      }
    }
  }

  private void fillSide(Workspace w, double more) {
    double[][] delta = w.work.change();
    double[][] side = w.work.side();
    int n = cases.size();
    for (int b = 0; b < flexible.length; b++) {
      for (int c = 0; c < n; c++) {
        for (int i = 0; i < 6; i++) {
          double sum = 0;
          for (int j = 0; j < 6; j++) {
            int at = 6 * b + j;
            sum += delta[6 * b + i][at] * (force[at][c] + more * force[at][n + c]);
          }
          for (int p = 0; p < 6; p++) {
            sum += w.change[p] * (tip[b][c][p][i] + more * tip[b][n + c][p][i]);
          }
          side[6 * b + i][c] = sum;
        }
      }
    }
  }

  private void read(Workspace w, double more) {
    double[][] e = w.work.side();
    int n = cases.size();
    for (int o = 0; o < w.value.length; o++) {
      for (int c = 0; c < n; c++) {
        double sum = base[o][c] + more * base[o][n + c];
        for (int i = 0; i < e.length; i++) {
          sum += effect[o][i] * e[i][c];
        }
        w.value[o][c] = sum;
      }
    }
  }

  private SpringSweep.State afresh(CrossSection with, Workspace w) {
    Preparation made = frame.withSection(section, with);
    if (made instanceof Loose found) {
      w.loose = found;
      return SpringSweep.State.LOOSE;
    }
    SpringSweep.fill((PreparedFrame) made, cases, readings.responses(), w.value);
    return SpringSweep.State.AFRESH;
  }
}
