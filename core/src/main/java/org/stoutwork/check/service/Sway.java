package org.stoutwork.check.service;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Action;
import org.stoutwork.action.Factors;
import org.stoutwork.action.Way;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Weight;
import org.stoutwork.check.Finding;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Racking;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * How far the bench racks under a push at its top: its long sides along the bench, its end frames
 * across it. The weight that leans with it adds to the sway (second order).
 */
public final class Sway {

  private static final Formula LIMIT =
      Formula.define("δ_{lim}")
          .meaning("sway that the duty allows")
          .unit(Unit.MM)
          .where("h", "height of the bench", Unit.MM)
          .where("n", "height over sway", Unit.ONE)
          .as("h/n")
          .source(Source.projectDefault("ratios of height to sway by duty"));

  /** A thrust takes the place of an earlier one when it sways farther than rounding may. */
  private static final double MORE = 1 + 1e-9;

  /** Sways that differ by less are the same up to rounding. */
  private static final double SAME = 1e-6;

  private final Inquiry inquiry;

  private Sway(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /** The check of one thrust, and the stiffness that it found. */
  public record Found(CheckResult check, Racking racking) {}

  /** One check for each thrust. */
  public static List<Found> all(Inquiry inquiry) {
    List<Found> out = new ArrayList<>();
    for (Action.Thrust thrust : inquiry.plan().of(Action.Thrust.class)) {
      out.add(new Sway(inquiry).check(thrust));
    }
    return out;
  }

  private Found check(Action.Thrust thrust) {
    Stand worst = worst(thrust);
    double h = inquiry.bench().height().mm();
    double weight = weight();
    double limit = LIMIT.value(h, inquiry.plan().criteria().swayRatio());
    StiffnessRange first = inquiry.range(level -> standing(level, worst) / limit).times(limit);
    StiffnessRange sway = first.each(value -> amplified(Pad.blank(), worst, value, weight, h));
    RecordingPad pad = Pad.recording();
    Source analysis = Source.derived("analysis of the frame, joints at mean stiffness");
    pad.given("δ_1", "sway where the thrust acts", first.mean(), Unit.MM, analysis);
    feet(worst, first.mean(), pad);
    double swayed = amplified(pad, worst, first.mean(), weight, h);
    pad.take(LIMIT, h, inquiry.plan().criteria().swayRatio());
    FrameByHand.compare(inquiry, thrust, pad);
    boolean along = thrust.way() == Way.ALONG;
    CheckResult check =
        Finding.of(
                along ? "sway-along" : "sway-across",
                along ? "Sway of the long sides along the bench" : "Sway of the end frames across",
                Topic.SWAY)
            .on("frame", "at the top")
            .under(worst.words(), "the thrust and the weight of the bench")
            .over(sway.times(1 / limit))
            .judge(swayed, limit, Unit.MM, pad);
    return new Found(
        inquiry.keep(check, behind(worst, first.mean())), racking(thrust, first, sway, limit));
  }

  private void feet(Stand worst, double first, Pad pad) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    if (!(mean.together(inquiry.combination(mean, Factors.thrust(), worst))
        instanceof FrameResult)) {
      pad.remark(
          "The bench tips under this thrust, which is judged by itself; the sway is that of the"
              + " bench held to the floor.");
    } else if (lifts(worst, first)) {
      pad.remark(
          "A foot lifts under this thrust and the weight of the bench: the sway is that on the feet"
              + " that stay, less what the weight alone moves.");
    }
  }

  /** Whether the bench sways otherwise than one whose feet are held to the floor. */
  private boolean lifts(Stand worst, double first) {
    double held = held(inquiry.at(JointLevel.MEAN), worst);
    return Math.abs(first - held) > SAME * held;
  }

  /** The sway before the weight leans: the movement of the thrust's node in its own direction. */
  private GoverningCase behind(Stand worst, double first) {
    Load.OnNode load = (Load.OnNode) worst.unit().loads().get(0);
    List<GoverningCase.Term> terms =
        List.of(
            new GoverningCase.Term(load.node(), Direction.UX, sense(worst) * load.force().x()),
            new GoverningCase.Term(load.node(), Direction.UY, sense(worst) * load.force().y()),
            new GoverningCase.Term(load.node(), Direction.RX, sense(worst) * load.moment().x()),
            new GoverningCase.Term(load.node(), Direction.RY, sense(worst) * load.moment().y()));
    if (!lifts(worst, first)) {
      return GoverningCase.movement(
          Combination.named("the thrust alone").plus(worst.force(), worst.unit()),
          "sway δ_1 where the thrust acts",
          first,
          terms);
    }
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    double byWeight = byWeight(mean, worst);
    return new GoverningCase(
        inquiry.combination(mean, Factors.thrust(), worst),
        FloorContact.MAY_LIFT,
        "movement where the thrust acts, %s mm of it by the weight alone"
            .formatted(Writing.number(byWeight, 3)),
        first + byWeight,
        terms);
  }

  private static Racking racking(
      Action.Thrust t, StiffnessRange first, StiffnessRange second, double limit) {
    double h = t.force();
    StiffnessRange amplification =
        new StiffnessRange(
            second.low() / first.low(), second.mean() / first.mean(), second.high() / first.high());
    return new Racking(
        t.way(),
        h,
        first.each(value -> h / value),
        Utilisation.printable(second.times(1 / limit)).times(limit),
        Utilisation.printable(amplification));
  }

  /** The sway with the weight that leans along; unlimited where the frame folds. */
  private static double amplified(Pad pad, Stand stand, double first, double weight, double h) {
    double force = Math.abs(stand.force());
    if (Double.isInfinite(first)) {
      return first;
    }
    double k = pad.take(SwayFormulas.STIFFNESS, force, first);
    if (k <= weight / h) {
      pad.remark("The frame cannot hold its own weight upright: it would fold.");
      return Double.POSITIVE_INFINITY;
    }
    return pad.take(SwayFormulas.AMPLIFIED, force, k, weight, h);
  }

  private double weight() {
    double kg =
        inquiry.masses().values().stream().mapToDouble(Double::doubleValue).sum()
            + inquiry.bench().weights().stream()
                .filter(Weight.OnTop.class::isInstance)
                .mapToDouble(w -> w.mass().kg())
                .sum();
    return kg * TopLoads.GRAVITY;
  }

  private Stand worst(Action.Thrust thrust) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    Stand worst = null;
    for (Stand stand : inquiry.places().thrusts(thrust)) {
      if (worst == null || standing(mean, stand) > MORE * standing(mean, worst)) {
        worst = stand;
      }
    }
    return worst;
  }

  /** The sway of a bench that is held to the floor. */
  private static double held(LevelAnalysis level, Stand stand) {
    return stand.force() * towards(stand, level.alone(stand.unit()));
  }

  /** The sway of the bench as it stands, on feet that its own weight holds down. */
  private double standing(LevelAnalysis level, Stand stand) {
    double both =
        inquiry
            .read(level.level(), Factors.thrust(), stand, r -> new double[] {towards(stand, r)})[0];
    return both - byWeight(level, stand);
  }

  private static double byWeight(LevelAnalysis level, Stand stand) {
    return towards(stand, level.settled(Combination.of(level.permanent())));
  }

  /** The movement of the thrust's node in the direction of the thrust. */
  private static double towards(Stand stand, FrameResult result) {
    Load.OnNode load = (Load.OnNode) stand.unit().loads().get(0);
    double[] u = result.displacement(load.node());
    return sense(stand)
        * (load.force().x() * u[0]
            + load.force().y() * u[1]
            + load.moment().x() * u[3]
            + load.moment().y() * u[4]);
  }

  private static double sense(Stand stand) {
    return Math.signum(stand.force());
  }
}
