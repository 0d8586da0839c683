package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.linear.SpringUpdate;

/**
 * Many variants of one frame that differ in some joint springs only: responses chosen beforehand,
 * under load cases chosen beforehand, from one factorisation.
 *
 * <p>The frame is solved once with these joints rigid; a variant then asks for the slips of r
 * springs, which is a dense system of r equations ({@link SpringUpdate}). Constants run from 0
 * (free) to infinity (rigid). Where the small system is ill-conditioned (see {@link #LIMIT}) the
 * variant is factorised afresh instead, and a mechanism is named as ever. Immutable; each thread
 * brings its own {@link Workspace}, and nothing depends on how variants are shared out.
 */
public final class SpringSweep {
  /**
   * A variant is updated only while every pivot of the small system exceeds this part of the
   * spring's constant plus its own member's resistance; then rounding grows by 10⁵ at most.
   */
  public static final double LIMIT = 1e-5;

  private final PreparedFrame frame;
  private final List<JointSpring> springs;
  private final List<LoadCase> cases;
  private final Readings readings;
  private final SpringUpdate update;

  private SpringSweep(
      PreparedFrame frame, List<JointSpring> springs, List<LoadCase> cases, Readings readings) {
    this.frame = frame;
    this.springs = springs;
    this.cases = cases;
    this.readings = readings;
    PreparedFrame rigid = frame.withMembers(members(null)).prepared();
    Readings onRigid = new Readings(rigid.layout(), readings.responses());
    Slips slips = new Slips(rigid, springs, onRigid);
    double[][] force = new double[springs.size()][cases.size()];
    double[][] base = new double[readings.size()][cases.size()];
    List<Readings.Motion> motions = Readings.cases(rigid, loadings(rigid, cases));
    for (int c = 0; c < cases.size(); c++) {
      for (int i = 0; i < springs.size(); i++) {
        force[i][c] = slips.force(i, motions.get(c));
      }
      double[] values = onRigid.of(motions.get(c));
      for (int o = 0; o < values.length; o++) {
        base[o][c] = values[o];
      }
    }
    this.update = new SpringUpdate(slips.resistance, slips.own, force, base, slips.effect);
  }

  static List<Loading> loadings(PreparedFrame frame, List<LoadCase> cases) {
    List<Loading> loadings = new ArrayList<>();
    for (LoadCase loadCase : cases) {
      loadings.add(new Loading(frame.layout(), Combination.of(loadCase)));
    }
    return loadings;
  }

  /**
   * Prepares a sweep.
   *
   * @param frame the frame; its own constants of these springs do not matter
   * @param springs what will be varied, in the order of the constants given later
   * @param cases load cases; prescribed displacements of the model act in each
   * @param responses what will be read
   * @throws IllegalArgumentException for unknown names, a spring named twice, or a frame with
   *     one-way contacts, whose answers do not add up
   * @throws IllegalStateException when the frame is loose even with these joints rigid
   */
  public static SpringSweep of(
      PreparedFrame frame,
      List<JointSpring> springs,
      List<LoadCase> cases,
      List<? extends Response> responses) {
    refuseContacts(frame);
    if (new HashSet<>(springs).size() != springs.size()) {
      throw new IllegalArgumentException("a spring is named twice; name each one once");
    }
    for (JointSpring spring : springs) {
      if (!frame.layout().beams.containsKey(spring.member())) {
        throw new IllegalArgumentException("there is no member '" + spring.member() + "'");
      }
    }
    return new SpringSweep(
        frame, List.copyOf(springs), List.copyOf(cases), new Readings(frame.layout(), responses));
  }

  static void refuseContacts(PreparedFrame frame) {
    if (frame.system().contacts() > 0) {
      throw new IllegalArgumentException(
          "a frame with "
              + frame.system().contacts()
              + " one-way supports or contacts cannot be swept by superposition; hold them two-way"
              + " or solve each variant by itself");
    }
  }

  /** The members with these constants, or with the swept springs rigid. */
  private Map<String, Member> members(double[] k) {
    Map<String, Member> changed = new LinkedHashMap<>(frame.model().members());
    for (int i = 0; i < springs.size(); i++) {
      JointSpring spring = springs.get(i);
      Member old = changed.get(spring.member());
      EndCondition condition =
          k == null || k[i] == Double.POSITIVE_INFINITY
              ? EndCondition.RIGID
              : EndCondition.elastic(k[i]);
      MemberEnd end =
          (spring.atEnd() ? old.end() : old.start()).with(spring.direction(), condition);
      changed.put(
          old.name(),
          new Member(
              old.name(),
              old.from(),
              old.to(),
              old.section(),
              old.material(),
              old.roll(),
              spring.atEnd() ? old.start() : end,
              spring.atEnd() ? end : old.end()));
    }
    return changed;
  }

  /** How a variant was answered. */
  public enum State {
    /** By the small system. */
    UPDATED,
    /** By a factorisation of its own, because the small system is ill-conditioned. */
    AFRESH,
    /** Not at all: it is a mechanism; see {@link Workspace#loose}. */
    LOOSE
  }

  /** Storage for one thread. */
  public Workspace workspace() {
    return new Workspace(update.work(), new double[readings.size()][cases.size()]);
  }

  /** One thread's storage and the answer of its last variant. */
  public static final class Workspace {
    private final SpringUpdate.Work work;
    private final double[][] afresh;
    private State state;
    private Loose loose;

    private Workspace(SpringUpdate.Work work, double[][] afresh) {
      this.work = work;
      this.afresh = afresh;
    }

    /**
     * A response of the last variant.
     *
     * @param response place in the list of responses
     * @param loadCase place in the list of cases
     * @throws IllegalStateException when the last variant is a mechanism
     */
    public double value(int response, int loadCase) {
      if (state == State.UPDATED) {
        return work.value(response, loadCase);
      } else if (state == State.AFRESH) {
        return afresh[response][loadCase];
      }
      throw new IllegalStateException(loose == null ? "nothing solved yet" : loose.message());
    }

    /** What moves freely in the last variant, or null. */
    public Loose loose() {
      return loose;
    }

    /** Smallest relative pivot of the last small system; see {@link SpringSweep#LIMIT}. */
    public double smallestPivot() {
      return work.smallestPivot();
    }
  }

  /**
   * Answers one variant. Allocates nothing unless it has to factorise afresh.
   *
   * @param k constants in the order of the springs, N/mm or N mm/rad, 0 to infinity
   * @throws IllegalArgumentException for a negative constant or a wrong number of them
   */
  public State solve(double[] k, Workspace w) {
    if (k.length != springs.size()) {
      throw new IllegalArgumentException(
          k.length + " constants for " + springs.size() + " springs");
    }
    for (int i = 0; i < k.length; i++) {
      if (!(k[i] >= 0)) {
        throw new IllegalArgumentException(
            "the spring " + springs.get(i) + " must be 0 to infinity; found " + k[i]);
      }
    }
    w.loose = null;
    w.state = update.solve(k, LIMIT, w.work) ? State.UPDATED : afresh(k, w);
    return w.state;
  }

  private State afresh(double[] k, Workspace w) {
    Preparation made = frame.withMembers(members(k));
    if (made instanceof Loose loose) {
      w.loose = loose;
      return State.LOOSE;
    }
    fill((PreparedFrame) made, cases, readings.responses(), w.afresh);
    return State.AFRESH;
  }

  /** Solves every case of a frame and reads every response. */
  static void fill(
      PreparedFrame frame, List<LoadCase> cases, List<Response> responses, double[][] values) {
    Readings own = new Readings(frame.layout(), responses);
    List<Readings.Motion> motions = Readings.cases(frame, loadings(frame, cases));
    for (int c = 0; c < cases.size(); c++) {
      double[] read = own.of(motions.get(c));
      for (int o = 0; o < read.length; o++) {
        values[o][c] = read[o];
      }
    }
  }
}
