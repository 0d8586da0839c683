package org.stoutwork.check.member;

import java.util.function.ToDoubleFunction;
import org.stoutwork.action.Way;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.UsePart;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Analyses the governing combination of a member at all three levels and writes it down. */
final class MemberFinding {

  private static final Source ANALYSIS =
      Source.derived("analysis of the frame, joints at mean stiffness");

  /** Least difference of a factor from 1 that a working shows. */
  private static final double SHOWN = 5e-4;

  /** Forces (and moments) smaller than this part of the largest at the same place are rounding. */
  private static final double NOISE = 1e-7;

  private final Inquiry inquiry;
  private final MemberStrength strength;
  private final Cut cut;
  private final Envelope.Mix mix;

  MemberFinding(Inquiry inquiry, MemberStrength strength, Cut cut, Envelope.Mix mix) {
    this.inquiry = inquiry;
    this.strength = strength;
    this.cut = cut;
    this.mix = mix;
  }

  CheckResult make(
      String key, String title, String group, MemberStrength.Wood wood, boolean bending) {
    double limit = inquiry.plan().criteria().strengthUse();
    Stresses blank = strength.stresses(cut.part(), wood.name(), mix.duration(), Pad.blank());
    ToDoubleFunction<LevelAnalysis> use =
        level -> {
          double[] f = forces(level, wood);
          return bending ? blank.bending(cut, f, Pad.blank()) : blank.shear(cut, f, Pad.blank());
        };
    StiffnessRange range = inquiry.range(level -> use.applyAsDouble(level) / limit);
    RecordingPad pad = Pad.recording();
    double[] f = forces(inquiry.at(JointLevel.MEAN), wood);
    Finding finding =
        Finding.of(key, title, Topic.MEMBER)
            .on(group, place(group))
            .under(mix.words(), mix.factors().words())
            .over(range);
    CheckResult.Checked check =
        bending ? bending(finding, f, wood, limit, pad) : shear(finding, f, wood, limit, pad);
    return inquiry.keep(check, mix.factors(), mix.leading());
  }

  private CheckResult.Checked bending(
      Finding finding, double[] f, MemberStrength.Wood wood, double limit, RecordingPad pad) {
    pad.given("N", "axial force, tension positive", f[0], Unit.N, ANALYSIS);
    pad.given("M_y", "moment up and down", f[4], Unit.N_MM, ANALYSIS);
    pad.given("M_z", "moment sideways", f[5], Unit.N_MM, ANALYSIS);
    remarks(wood, pad);
    Stresses s = strength.stresses(cut.part(), wood.name(), mix.duration(), pad);
    if (f[0] < 0) {
      inquiry
          .strengths()
          .explain(wood.name(), mix.duration(), DesignQuantity.COMPRESSION_PARALLEL, pad);
      if (cut.part().kind() == PartKind.LEG) {
        strength.lengths().of(cut.part(), Way.ALONG, pad);
        strength.lengths().of(cut.part(), Way.ACROSS, pad);
      }
    }
    return finding.judgeSum(s.bending(cut, f, pad), limit, pad);
  }

  private CheckResult.Checked shear(
      Finding finding, double[] f, MemberStrength.Wood wood, double limit, RecordingPad pad) {
    pad.given("V_z", "shear force up and down", f[2], Unit.N, ANALYSIS);
    pad.given("V_y", "shear force sideways", f[1], Unit.N, ANALYSIS);
    remarks(wood, pad);
    Stresses s = strength.stresses(cut.part(), wood.name(), mix.duration(), Pad.blank());
    inquiry
        .strengths()
        .explain(wood.name(), mix.duration(), strength.shearOf(cut.part(), wood.name()), pad);
    double tau = s.shearStress(cut, f, pad);
    return finding.judge(tau, UsePart.of(s.fv(), limit, Unit.MPA, pad), Unit.MPA, pad);
  }

  private void remarks(MemberStrength.Wood wood, Pad pad) {
    if (cut.mortised() && cut.part().kind() == PartKind.TOP) {
      pad.remark(
          "The section is taken net of dog holes, as though they stood where it is used most.");
    } else if (cut.mortises() == 1) {
      pad.remark("The section is taken net of the mortise or bore that is cut here.");
    } else if (cut.mortised()) {
      pad.remark(
          "The section is taken net of the %s mortises and bores that meet here; glued tenons count as holes."
              .formatted(cut.mortises()));
    }
    if (Math.abs(wood.factor() - 1) > SHOWN) {
      pad.remark(
          "The top has layers: the moment is multiplied by %s, the stress in its most used layer"
                  .formatted(Writing.fixed(wood.factor(), 3))
              + " over that of a solid top.");
    }
  }

  private double[] forces(LevelAnalysis level, MemberStrength.Wood wood) {
    double[] forces = inquiry.read(level.level(), mix.factors(), mix.leading(), cut::forces);
    return withoutNoise(MemberStrength.scaled(forces, wood.factor()));
  }

  /** What rounding leaves of forces that cancel is no force. */
  private static double[] withoutNoise(double[] forces) {
    double[] clean = forces.clone();
    for (int first = 0; first < 6; first += 3) {
      double largest = 0;
      for (int i = first; i < first + 3; i++) {
        largest = Math.max(largest, Math.abs(forces[i]));
      }
      for (int i = first; i < first + 3; i++) {
        clean[i] = Math.abs(forces[i]) < NOISE * largest ? 0 : forces[i];
      }
    }
    return clean;
  }

  private String place(String group) {
    return Length.ofMm(Math.rint(cut.at())) + from(group) + net();
  }

  private String net() {
    if (!cut.mortised()) {
      return "";
    }
    if (cut.part().kind() == PartKind.TOP) {
      return ", net of dog holes";
    }
    return cut.mortises() > 1 ? ", where mortises or bores meet" : ", at a mortise";
  }

  /** From where a place on a part is measured. */
  private String from(String group) {
    return switch (cut.part().kind()) {
      case LEG -> " above its lower end";
      case STRETCHER -> " from its left shoulder";
      case TOP_RAIL, BOTTOM_RAIL -> " from its front shoulder";
      case FOOT -> " from its front end";
      case TOP ->
          group.endsWith("across")
              ? " from the front end of a strip across"
              : " from the left end of a strip along";
    };
  }
}
