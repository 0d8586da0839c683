package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.check.UsePart;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.TenonHole;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Bearing of a rail that lies over its legs, and of legs on a sled foot: the end of the leg presses
 * across the grain of the other piece. Where the rail is tenoned between the legs, the tenon bears
 * in its mortise; that is one of the limits of the joint itself.
 */
public final class RailBearing {

  private static final Formula STRESS =
      Formula.define("σ_{c,90}")
          .meaning("pressure across the grain under the shoulders of the leg")
          .unit(Unit.MPA)
          .where("N", "push of the leg", Unit.N)
          .where("b", "thickness in contact", Unit.MM)
          .where("a", "width in contact", Unit.MM)
          .where("A_h", "area of the mortise", Unit.MM2)
          .as("N/(b*a - A_h)")
          .source(Source.derived("force over the area that touches"));

  private final Inquiry inquiry;

  private RailBearing(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /** One check for the leg that presses hardest on each kind of piece. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return new RailBearing(inquiry).all();
  }

  private record Worst(JointSpot spot, Stand leading, double push) {}

  private List<CheckResult> all() {
    List<CheckResult> out = new ArrayList<>();
    List<JointSpot> upright =
        inquiry.at(JointLevel.MEAN).model().joints().stream().filter(JointSpot::upright).toList();
    check(upright.stream().filter(s -> !s.atStart()).toList(), "top rail", out);
    check(upright.stream().filter(JointSpot::atStart).toList(), "foot", out);
    return out;
  }

  private void check(List<JointSpot> spots, String on, List<CheckResult> out) {
    Worst worst = null;
    for (JointSpot spot : spots) {
      for (Stand stand : inquiry.stands()) {
        double push = pushAlone(spot, stand);
        if (worst == null || push > worst.push()) {
          worst = new Worst(spot, stand, push);
        }
      }
    }
    if (worst != null) {
      out.add(finding(worst, on));
    }
  }

  private double pushAlone(JointSpot spot, Stand stand) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    return stand.force() * push(spot, mean.alone(stand.unit()));
  }

  private static double push(JointSpot spot, FrameResult result) {
    MemberResult leg = result.member(spot.member());
    return spot.atStart() ? leg.start()[0] : -leg.end()[0];
  }

  private CheckResult finding(Worst worst, String on) {
    Factors factors = Factors.strength(inquiry.bench().basis());
    JointSpot spot = worst.spot();
    DurationClass duration = worst.leading().action().duration();
    String wood =
        inquiry.at(JointLevel.MEAN).model().parts().stream()
            .filter(p -> p.name().equals(spot.post()))
            .findFirst()
            .orElseThrow()
            .wood();
    RecordingPad pad = Pad.recording();
    double whole =
        inquiry
            .strengths()
            .explain(wood, duration, DesignQuantity.COMPRESSION_PERPENDICULAR, pad)
            .orElseThrow();
    double strength = UsePart.of(whole, inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
    StiffnessRange range =
        inquiry.range(
            level -> stress(spot, push(level.level(), factors, worst), Pad.blank()) / strength);
    double push = push(JointLevel.MEAN, factors, worst);
    pad.given(
        "N", "push of the leg", push, Unit.N, Source.derived("analysis, joints at mean stiffness"));
    double stress = stress(spot, push, pad);
    CheckResult.Checked check =
        Finding.of("bearing-" + on.replace(' ', '-'), "Bearing of leg and " + on, Topic.JOINT)
            .on(spot.name(), "under the shoulders of the leg")
            .under(worst.leading().words(), factors.words())
            .over(range)
            .judge(Math.max(0, stress), strength, Unit.MPA, pad);
    return inquiry.keep(check, factors, worst.leading());
  }

  private double push(JointLevel level, Factors factors, Worst worst) {
    return inquiry
        .read(level, factors, worst.leading(), r -> new double[] {push(worst.spot(), r)})[0];
  }

  private static double stress(JointSpot spot, double push, Pad pad) {
    Joint.Members m = spot.setting().members();
    double b = Math.min(m.railThickness(), m.postThickness());
    double hole =
        TenonHole.of(spot.joint().joint(), m).width()
            * TenonHole.of(spot.joint().joint(), m).height();
    double clear = Math.min(hole, 0.9 * b * m.railDepth());
    return pad.take(STRESS, push, b, m.railDepth(), clear);
  }
}
