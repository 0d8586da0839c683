package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lamination;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.MissingValues;
import org.stoutwork.check.Stand;
import org.stoutwork.check.UsePart;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Glue lines along pieces: of legs glued up from several, and of the piece that deepens the end of
 * a stretcher. Both faces are long grain, so a sound line is as strong as the wood beside it.
 */
public final class GlueLines {

  private static final Source ANALYSIS =
      Source.derived("analysis of the frame, joints at mean stiffness");

  private final Inquiry inquiry;
  private final JointStrengths strengths;

  private GlueLines(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.strengths = new JointStrengths(inquiry);
  }

  /** One check for the legs and one for each stretcher with deepened ends. */
  public static List<CheckResult> all(Inquiry inquiry) {
    GlueLines lines = new GlueLines(inquiry);
    List<CheckResult> out = new ArrayList<>();
    lines.legs().ifPresent(out::add);
    for (Stretcher stretcher : inquiry.bench().stretchers()) {
      if (stretcher.extension().isPresent()) {
        out.add(lines.deepened(stretcher));
      }
    }
    return out;
  }

  /** A line of glue and the action that uses it most. */
  private record Line(
      String key, String title, String part, String place, String wood, Stand leading) {}

  private Optional<CheckResult> legs() {
    BenchModel model = inquiry.at(JointLevel.MEAN).model();
    Part governing = null;
    Stand leading = null;
    double most = -1;
    for (Part part : model.parts()) {
      if (part.kind() == PartKind.LEG && lamination(part).isPresent()) {
        for (Stand stand : inquiry.stands()) {
          double v =
              Math.abs(stand.force())
                  * shear(part, inquiry.at(JointLevel.MEAN).alone(stand.unit()));
          if (v > most) {
            most = v;
            governing = part;
            leading = stand;
          }
        }
      }
    }
    return governing == null ? Optional.empty() : Optional.of(leg(governing, leading));
  }

  private EndFrame frameOf(Part leg) {
    return inquiry.bench().endFrames().stream()
        .filter(
            f ->
                leg.name().equals(f.name() + " front leg")
                    || leg.name().equals(f.name() + " back leg"))
        .findFirst()
        .orElseThrow();
  }

  private Optional<Lamination> lamination(Part leg) {
    return frameOf(leg).leg().lamination();
  }

  /** Greatest shear force of a leg in the direction in which its pieces are stacked. */
  private double shear(Part leg, FrameResult result) {
    int axis = lamination(leg).orElseThrow().stacked() == Grain.ALONG ? 2 : 1;
    double most = 0;
    for (Piece piece : leg.pieces()) {
      MemberResult member = result.member(piece.member());
      most = Math.max(most, Math.max(Math.abs(member.start()[axis]), Math.abs(member.end()[axis])));
    }
    return most;
  }

  private CheckResult leg(Part leg, Stand leading) {
    EndFrame frame = frameOf(leg);
    Lamination made = frame.leg().lamination().orElseThrow();
    boolean along = made.stacked() == Grain.ALONG;
    double h = along ? frame.leg().along().mm() : frame.leg().across().mm();
    double b = along ? frame.leg().across().mm() : frame.leg().along().mm();
    double off = made.count() % 2 == 0 ? 0 : h / made.count() / 2;
    double first = b * (h / 2 - off) * (h / 2 + off) / 2;
    double inertia = b * h * h * h / 12;
    Line line =
        new Line(
            "glue-line-legs",
            "Glue lines of built-up legs",
            leg.name(),
            "line nearest to the middle of %s pieces stacked %s the bench"
                .formatted(made.count(), made.stacked().words()),
            frame.leg().wood(),
            leading);
    return judged(
        line,
        result -> new double[] {shear(leg, result)},
        (pad, f) -> Laminations.shear(pad, f[0], first, inertia, b));
  }

  private CheckResult deepened(Stretcher stretcher) {
    JointSpot governing = null;
    Stand leading = null;
    double most = -1;
    for (JointSpot spot : inquiry.at(JointLevel.MEAN).model().joints()) {
      if (spot.rail().equals(stretcher.name())
          || spot.rail().startsWith(stretcher.name() + ", bay ")) {
        for (Stand stand : inquiry.stands()) {
          double[] f = JointForcesAt.raw(spot, inquiry.at(JointLevel.MEAN).alone(stand.unit()));
          double m = Math.abs(stand.force() * f[3]);
          if (m > most) {
            most = m;
            governing = spot;
            leading = stand;
          }
        }
      }
    }
    JointSpot spot = governing;
    double whole = stretcher.endDepthMm();
    double piece = whole - stretcher.depth().mm();
    double b = stretcher.thickness().mm();
    double length = stretcher.extension().orElseThrow().length().mm();
    double first = b * piece * (whole - piece) / 2;
    double inertia = b * whole * whole * whole / 12;
    Line line =
        new Line(
            "glue-line-" + JointStrengthCheck.key(stretcher.name()),
            "Glue line of a deepened end",
            stretcher.name(),
            "the glued-on piece at its joint",
            stretcher.wood(),
            leading);
    return judged(
        line,
        result -> JointForcesAt.raw(spot, result),
        (pad, f) ->
            Laminations.gluedOn(pad, f[3], first, inertia, b, length)
                + Laminations.shear(pad, Math.abs(f[1]), first, inertia, b));
  }

  private CheckResult judged(Line line, Function<FrameResult, double[]> forces, Stress stress) {
    DurationClass duration = line.leading().action().duration();
    String missing = MissingValues.of(inquiry, line.wood(), List.of(DesignQuantity.SHEAR));
    if (!missing.isEmpty()) {
      return new CheckResult.NotChecked(
          line.key(), line.title(), line.part(), Topic.JOINT, missing);
    }
    Factors factors = Factors.strength(inquiry.bench().basis());
    RecordingPad pad = Pad.recording();
    double wood =
        inquiry.strengths().explain(line.wood(), duration, DesignQuantity.SHEAR, pad).orElseThrow();
    double strength =
        UsePart.of(
            strength(line.wood(), duration, wood, pad),
            inquiry.plan().criteria().strengthUse(),
            Unit.MPA,
            pad);
    ToDoubleFunction<JointLevel> at =
        level ->
            stress.of(Pad.blank(), inquiry.read(level, factors, line.leading(), forces)) / strength;
    StiffnessRange range = inquiry.range(level -> at.applyAsDouble(level.level()));
    double[] f = inquiry.read(JointLevel.MEAN, factors, line.leading(), forces);
    for (int i = 0; i < Math.min(f.length, 4); i++) {
      if (f.length == 1 || i == 1 || i == 3) {
        boolean moment = i == 3;
        pad.given(
            moment ? "M" : "V",
            moment ? "moment at the joint" : "shear force",
            f[i],
            moment ? Unit.N_MM : Unit.N,
            ANALYSIS);
      }
    }
    double tau = stress.of(pad, f);
    CheckResult.Checked check =
        Finding.of(line.key(), line.title(), Topic.JOINT)
            .on(line.part(), line.place())
            .under(line.leading().words(), factors.words())
            .over(range)
            .judge(tau, strength, Unit.MPA, pad);
    return inquiry.keep(check, factors, line.leading());
  }

  /** Stress on a line from the forces on it, MPa. */
  private interface Stress {
    double of(Pad pad, double[] forces);
  }

  private double strength(String wood, DurationClass duration, double shear, Pad pad) {
    Glue glue = inquiry.bench().glue().glue();
    pad.remark("Long grain on long grain: a sound line is as strong as the wood.");
    if (!glue.structural()) {
      pad.remark(glue.name() + " (" + glue.grade().words() + ") is no structural glue to EN 301.");
    }
    double limit =
        GlueDesign.classLimit(
            pad, glue.grade(), strengths.of(wood, wood, duration).family(), shear);
    return Math.min(shear, limit);
  }
}
