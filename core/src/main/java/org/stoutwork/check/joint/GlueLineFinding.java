package org.stoutwork.check.joint;

import java.util.List;
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

/** Judges a line of glue: by the wood beside it, and by the class of the glue. */
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

  /** A line of glue, the strength that counts in it, and the action that uses it most. */
  record Line(
      String key,
      String title,
      String part,
      String place,
      String wood,
      DesignQuantity what,
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
    String missing = MissingValues.of(inquiry, line.wood(), List.of(line.what()));
    if (!missing.isEmpty()) {
      return new CheckResult.NotChecked(
          line.key(), line.title(), line.part(), Topic.JOINT, missing);
    }
    Factors factors = Factors.strength(inquiry.bench().basis());
    RecordingPad pad = Pad.recording();
    double wood =
        inquiry.strengths().explain(line.wood(), duration, line.what(), pad).orElseThrow();
    double strength =
        UsePart.of(
            strength(line, duration, wood, pad),
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

  private double strength(Line line, DurationClass duration, double wood, Pad pad) {
    Glue glue = inquiry.bench().glue().glue();
    if (line.what() == DesignQuantity.SHEAR) {
      pad.remark("Long grain on long grain: a sound line is as strong as the wood.");
    } else {
      pad.remark("A sound line is as strong as the wood beside it in this direction.");
    }
    if (!glue.structural()) {
      pad.remark(glue.name() + " (" + glue.grade().words() + ") is no structural glue to EN 301.");
    }
    StrengthFamily rules = strengths.family(line.wood(), duration);
    if (JointStrengths.lasts(duration) && glue.creeps()) {
      pad.remark(
          glue.name() + " gives way under lasting load: taken with the factor of permanent load.");
      rules = GlueDesign.permanent(rules);
    }
    double held = strengths.gluesPoorly(line.wood()) ? GlueDesign.poor(pad, wood) : wood;
    return Math.min(held, GlueDesign.classLimit(pad, glue.grade(), rules, held));
  }
}
