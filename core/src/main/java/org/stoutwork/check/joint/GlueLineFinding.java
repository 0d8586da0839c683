package org.stoutwork.check.joint;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.MissingValues;
import org.stoutwork.check.Stand;
import org.stoutwork.check.UsePart;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Judges a line of glue: by the woods on both its sides, and by the class of the glue. */
final class GlueLineFinding {

  /** A shear force as a working shows it. */
  static final Shown SHEAR = new Shown("V", "shear force", Unit.N);

  private static final Source ANALYSIS =
      Source.derived("analysis of the frame, joints at mean stiffness");

  private final Inquiry inquiry;
  private final JointStrengths strengths;

  GlueLineFinding(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.strengths = new JointStrengths(inquiry);
  }

  /** How a force is shown before the working. */
  record Shown(String symbol, String meaning, Unit unit) {}

  /** The wood on one side of a line, and the strength of it that counts there. */
  record Side(String wood, DesignQuantity what) {}

  /** A line of glue, the one or two sides of it that differ, and the action that uses it most. */
  record Line(
      String key,
      String title,
      String part,
      String place,
      List<Side> sides,
      Stand leading,
      List<Shown> forces) {}

  /** Stress on a line from the forces on it, MPa. */
  interface Stress {
    double of(Pad pad, double[] forces);
  }

  /**
   * The check of one line.
   *
   * @param forces reads them from a result, in the order in which the line shows them
   */
  CheckResult judged(Line line, Function<FrameResult, double[]> forces, Stress stress) {
    DurationClass duration = line.leading().action().duration();
    for (Side side : line.sides()) {
      String missing = MissingValues.of(inquiry, side.wood(), List.of(side.what()));
      if (!missing.isEmpty()) {
        return new CheckResult.NotChecked(
            line.key(), line.title(), line.part(), Topic.JOINT, missing);
      }
    }
    Factors factors = Factors.strength(inquiry.bench().basis());
    RecordingPad pad = Pad.recording();
    double strength =
        UsePart.of(
            strength(line.sides(), weaker(line.sides(), duration), duration, pad),
            inquiry.plan().criteria().strengthUse(),
            Unit.MPA,
            pad);
    ToDoubleFunction<JointLevel> at =
        level ->
            stress.of(Pad.blank(), inquiry.read(level, factors, line.leading(), forces)) / strength;
    StiffnessRange range = inquiry.range(level -> at.applyAsDouble(level.level()));
    double[] f = inquiry.read(JointLevel.MEAN, factors, line.leading(), forces);
    for (int i = 0; i < line.forces().size(); i++) {
      Shown shown = line.forces().get(i);
      pad.given(shown.symbol(), shown.meaning(), f[i], shown.unit(), ANALYSIS);
    }
    double sigma = stress.of(pad, f);
    CheckResult.Checked check =
        Finding.of(line.key(), line.title(), Topic.JOINT)
            .on(line.part(), line.place())
            .under(line.leading().words(), factors.words())
            .over(range)
            .judge(sigma, strength, Unit.MPA, pad);
    return inquiry.keep(check, factors, line.leading());
  }

  /** Strength of a line, MPa: that of its weaker side; 0 where a value is missing. */
  double strength(List<Side> sides, DurationClass duration) {
    boolean known =
        sides.stream()
            .allMatch(s -> MissingValues.of(inquiry, s.wood(), List.of(s.what())).isEmpty());
    return known ? strength(sides, weaker(sides, duration), duration, Pad.blank()) : 0;
  }

  private Side weaker(List<Side> sides, DurationClass duration) {
    return sides.stream()
        .min(Comparator.comparingDouble(s -> strength(sides, s, duration, Pad.blank())))
        .orElseThrow();
  }

  /** Strength by one side; lowered where the wood of either bonds with difficulty. */
  private double strength(List<Side> sides, Side side, DurationClass duration, Pad pad) {
    double wood =
        pad.keepsLines()
            ? inquiry.strengths().explain(side.wood(), duration, side.what(), pad).orElseThrow()
            : inquiry.strengths().value(side.wood(), duration, side.what()).orElseThrow();
    if (sides.stream().map(Side::wood).distinct().count() > 1) {
      pad.remark(
          "The weaker of the two woods that meet counts: %s."
              .formatted(strengths.named(side.wood()).name()));
    }
    Glue glue = inquiry.bench().glue().glue();
    if (side.what() == DesignQuantity.SHEAR) {
      pad.remark("Long grain on long grain: a sound line is as strong as the wood.");
    } else {
      pad.remark("A sound line is as strong as the wood beside it in this direction.");
    }
    if (!glue.structural()) {
      pad.remark(glue.name() + " (" + glue.grade().words() + ") is no structural glue to EN 301.");
    }
    StrengthFamily rules = strengths.family(side.wood(), duration);
    if (JointStrengths.lasts(duration) && glue.creeps()) {
      pad.remark(
          glue.name() + " gives way under lasting load: taken with the factor of permanent load.");
      rules = GlueDesign.permanent(rules);
    }
    Optional<String> poor =
        sides.stream().map(Side::wood).filter(strengths::gluesPoorly).findFirst();
    poor.ifPresent(
        p -> pad.remark(strengths.named(p).name() + " is known to bond with difficulty."));
    double held = poor.isPresent() ? GlueDesign.poor(pad, wood) : wood;
    return Math.min(held, GlueDesign.classLimit(pad, glue.grade(), rules, held));
  }
}
