package org.stoutwork.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stoutwork.action.ActionPlan;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Masses;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Weight;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.SelfCheck;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.wood.design.DesignTables;

/**
 * One bench under examination: its analyses, actions, strengths. Made for one run of the checks and
 * handed to each of them; not thread-safe.
 */
public final class Inquiry {

  /**
   * A frame that is propped at the softest keeps a thousandth of its mean stiffness, so what hangs
   * on it grows by hundreds, and what does not by a few times at most.
   */
  private static final double OUT_OF_PROPORTION = 25;

  private final Bench bench;
  private final ActionPlan plan;
  private final Timbers timbers;
  private final Strengths strengths;
  private final Tally tally = new Tally();
  private final Map<JointLevel, LevelAnalysis> levels = new EnumMap<>(JointLevel.class);
  private final Stands places;
  private final List<Stand> stands;
  private final Optional<PlatedTop> plate;
  private final Map<Mixed, IdentityHashMap<Stand, FrameResult>> settled = new HashMap<>();
  private final Map<Mixed, IdentityHashMap<Stand, Boolean>> pressing = new HashMap<>();
  private final IdentityHashMap<CheckResult, GoverningCase> behind = new IdentityHashMap<>();

  private record Mixed(JointLevel level, Factors factors) {}

  /** Analyses a bench with its top as a plate and as a grillage. */
  public Inquiry(Bench bench, DesignTables tables) {
    this(bench, tables, TopModels.PLATE_AND_GRILLAGE);
  }

  /**
   * Analyses a bench.
   *
   * @param bench to examine
   * @param tables of the woods
   * @param top models of the top
   * @throws LooseBench naming the part that is loose, if the frame cannot stand even with joints at
   *     their mean stiffness
   */
  public Inquiry(Bench bench, DesignTables tables, TopModels top) {
    this.bench = bench;
    this.plan = ActionPlan.of(bench);
    this.timbers = Timbers.of(bench, tables);
    this.strengths = new Strengths(bench, tables);
    LevelAnalysis mean = LevelAnalysis.mean(bench, timbers, tally);
    levels.put(JointLevel.LOW, mean.at(JointLevel.LOW));
    levels.put(JointLevel.MEAN, mean);
    levels.put(JointLevel.HIGH, mean.at(JointLevel.HIGH));
    this.places = new Stands(bench, mean.model().grid(), mean.loads());
    this.stands = places.all(plan);
    mean.prepare(stands.stream().map(Stand::unit).toList());
    levels.values().forEach(level -> Reciprocity.check(level, tally));
    this.plate =
        top == TopModels.PLATE_AND_GRILLAGE
            ? Optional.of(new PlatedTop(bench, timbers, at(JointLevel.LOW).propped(), tally))
            : Optional.empty();
  }

  /** The top as a plate, where that is wanted. */
  public Optional<PlatedTop> plate() {
    return plate;
  }

  /** The places of actions. */
  public Stands places() {
    return places;
  }

  /** A wood of the bench as a maker calls it. */
  public String nameOf(String wood) {
    return bench.timbers().get(wood).wood().names().get(0);
  }

  /** The bench. */
  public Bench bench() {
    return bench;
  }

  /** Its actions and limits. */
  public ActionPlan plan() {
    return plan;
  }

  /** Stiffness and density of its woods. */
  public Timbers timbers() {
    return timbers;
  }

  /** Strengths of its woods. */
  public Strengths strengths() {
    return strengths;
  }

  /** Its analysis at one level of the joints' stiffness. */
  public LevelAnalysis at(JointLevel level) {
    return levels.get(level);
  }

  /** Every action in every place that strength is checked for. */
  public List<Stand> stands() {
    return stands;
  }

  /**
   * A value that must not be large, at all three levels. Without limit at the lowest if the frame
   * is loose there and the value hangs on what holds it up.
   */
  public StiffnessRange range(ToDoubleFunction<LevelAnalysis> value) {
    double low = value.applyAsDouble(at(JointLevel.LOW));
    double mean = value.applyAsDouble(at(JointLevel.MEAN));
    boolean hangs = at(JointLevel.LOW).propped() && low > 1 && low > OUT_OF_PROPORTION * mean;
    return new StiffnessRange(
        hangs ? Double.POSITIVE_INFINITY : low, mean, value.applyAsDouble(at(JointLevel.HIGH)));
  }

  /** Permanent, stored and one leading action with their factors. */
  public Combination combination(LevelAnalysis level, Factors factors, Stand leading) {
    Map<LoadCase, Double> parts = new LinkedHashMap<>();
    put(parts, level.permanent(), factors.permanent());
    if (level.loads().storesAnything()) {
      put(parts, level.stored(), factors.stored());
    }
    if (factors.leading() != 0 && leading != null) {
      put(parts, leading.unit(), factors.leading() * leading.force());
    }
    return new Combination(factors.words(), parts);
  }

  private static void put(Map<LoadCase, Double> parts, LoadCase loadCase, double factor) {
    if (factor != 0) {
      parts.put(loadCase, factor);
    }
  }

  /** The answer to a combination at one level, feet free to lift. */
  public FrameResult solve(JointLevel level, Factors factors, Stand leading) {
    return settled
        .computeIfAbsent(new Mixed(level, factors), mixed -> new IdentityHashMap<>())
        .computeIfAbsent(
            leading,
            stand -> {
              LevelAnalysis analysis = at(level);
              return analysis.settled(combination(analysis, factors, stand));
            });
  }

  /**
   * Forces or movements under a combination. They are added up from single load cases as long as
   * every foot presses on the floor, which is the same as analysing the combination as a whole;
   * where a foot would lift, the combination is analysed as a whole with feet that may.
   *
   * @param reading what is read from a result; it must grow in proportion to the loads
   */
  public double[] read(
      JointLevel level, Factors factors, Stand leading, Function<FrameResult, double[]> reading) {
    boolean pressed =
        pressing
            .computeIfAbsent(new Mixed(level, factors), mixed -> new IdentityHashMap<>())
            .computeIfAbsent(leading, stand -> allFeetPress(level, factors, stand));
    if (!pressed) {
      return reading.apply(solve(level, factors, leading));
    }
    return addedUp(level, factors, leading, reading);
  }

  private boolean allFeetPress(JointLevel level, Factors factors, Stand leading) {
    double[] pushes = addedUp(level, factors, leading, at(level)::pushes);
    return Arrays.stream(pushes).allMatch(push -> push >= 0);
  }

  private double[] addedUp(
      JointLevel level, Factors factors, Stand leading, Function<FrameResult, double[]> reading) {
    LevelAnalysis analysis = at(level);
    double[] sum = null;
    for (Map.Entry<LoadCase, Double> part :
        combination(analysis, factors, leading).factors().entrySet()) {
      double[] values = reading.apply(analysis.alone(part.getKey()));
      sum = sum == null ? new double[values.length] : sum;
      for (int i = 0; i < values.length; i++) {
        sum[i] += part.getValue() * values[i];
      }
    }
    return sum;
  }

  /** Keeps the movement that a check reads. */
  public <C extends CheckResult> C keep(C check, GoverningCase governing) {
    behind.put(check, governing);
    return check;
  }

  /** Keeps the combination whose forces a check reads. */
  public <C extends CheckResult> C keep(C check, Factors factors, Stand leading) {
    return keep(check, GoverningCase.forces(combination(at(JointLevel.MEAN), factors, leading)));
  }

  /** The analysis behind a check; empty where it needs none. */
  public Optional<GoverningCase> behind(CheckResult check) {
    return Optional.ofNullable(behind.get(check));
  }

  /** Masses of everything that stays on the bench, kg by name. */
  public Map<String, Double> masses() {
    Map<String, Double> out = Masses.byPart(bench, timbers::get);
    bench.vises().forEach(v -> out.merge("vises", v.mass().kg(), Double::sum));
    for (Weight weight : bench.weights()) {
      if (weight.fixed()) {
        out.merge(weight.name(), weight.mass().kg(), Double::sum);
      }
    }
    return out;
  }

  /** How well the analyses so far hold together. */
  public SelfCheck selfCheck() {
    return tally.selfCheck();
  }

  /** The combinations of strength, the words of each once. */
  public List<String> combinationWords() {
    List<String> out = new ArrayList<>();
    out.add("strength: " + Factors.strength(bench.basis()).words());
    out.add("strength: " + Factors.alone(bench.basis()).words());
    if (at(JointLevel.MEAN).loads().storesAnything()) {
      out.add("strength: " + Factors.withStored(bench.basis()).words());
    }
    out.add("use: " + Factors.use().words());
    return out;
  }
}
