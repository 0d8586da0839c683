package org.stoutwork.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.stoutwork.action.ActionPlan;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Masses;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Weight;
import org.stoutwork.result.SelfCheck;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.wood.design.DesignTables;

/**
 * One bench under examination: its analyses, actions, strengths. Made for one run of the checks and
 * handed to each of them; not thread-safe.
 */
public final class Inquiry {

  private final Bench bench;
  private final ActionPlan plan;
  private final Timbers timbers;
  private final Strengths strengths;
  private final Tally tally = new Tally();
  private final Map<JointLevel, LevelAnalysis> levels = new EnumMap<>(JointLevel.class);
  private final List<Stand> stands;
  private final Optional<PlatedTop> plate;
  private final Map<Solved, FrameResult> settled = new HashMap<>();

  private record Solved(JointLevel level, String factors, String leading) {}

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
   * @throws IllegalStateException naming the part that is loose, if the frame cannot stand even
   *     with joints at their mean stiffness
   */
  public Inquiry(Bench bench, DesignTables tables, TopModels top) {
    this.bench = bench;
    this.plan = ActionPlan.of(bench);
    this.timbers = Timbers.of(bench, tables);
    this.strengths = new Strengths(bench, tables);
    for (JointLevel level : JointLevel.values()) {
      levels.put(level, new LevelAnalysis(bench, timbers, level, tally));
    }
    this.stands = places().all(plan);
    checkReciprocity();
    this.plate =
        top == TopModels.PLATE_AND_GRILLAGE
            ? Optional.of(new PlatedTop(bench, timbers, tally))
            : Optional.empty();
  }

  /** The top as a plate, where that is wanted. */
  public Optional<PlatedTop> plate() {
    return plate;
  }

  /** The places of actions. */
  public Stands places() {
    LevelAnalysis mean = at(JointLevel.MEAN);
    return new Stands(bench, mean.model().grid(), mean.loads());
  }

  private void checkReciprocity() {
    LevelAnalysis mean = at(JointLevel.MEAN);
    int lastLine = mean.model().grid().lines().size() - 1;
    int middle = mean.model().grid().stations().size() / 2;
    String a = TopLoads.node(0, middle);
    String b = TopLoads.node(lastLine, 0);
    double there = mean.alone(mean.loads().unitPoint(0, middle)).displacement(b)[2];
    double back = mean.alone(mean.loads().unitPoint(lastLine, 0)).displacement(a)[2];
    tally.mustAgree(there, back);
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

  /** A value at all three levels. */
  public StiffnessRange range(ToDoubleFunction<LevelAnalysis> value) {
    return new StiffnessRange(
        value.applyAsDouble(at(JointLevel.LOW)),
        value.applyAsDouble(at(JointLevel.MEAN)),
        value.applyAsDouble(at(JointLevel.HIGH)));
  }

  /** Permanent, stored and one leading action with their factors. */
  public Combination combination(LevelAnalysis level, Factors factors, Stand leading) {
    Map<LoadCase, Double> parts = new LinkedHashMap<>();
    put(parts, level.loads().permanent(), factors.permanent());
    if (level.loads().storesAnything()) {
      put(parts, level.loads().stored(), factors.stored());
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
    String leads = leading == null ? "" : leading.words();
    return settled.computeIfAbsent(
        new Solved(level, factors.words(), leads),
        key -> {
          LevelAnalysis analysis = at(level);
          return analysis.settled(combination(analysis, factors, leading));
        });
  }

  /** Masses of everything that stays on the bench, kg by name. */
  public Map<String, Double> masses() {
    Map<String, Double> out = Masses.byPart(bench, timbers::get);
    bench.vises().forEach(v -> out.merge("vises", v.mass().kg(), Double::sum));
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine machine) {
        out.merge(machine.name(), machine.mass().kg(), Double::sum);
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
