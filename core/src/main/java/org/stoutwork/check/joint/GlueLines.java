package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.wood.design.DesignQuantity;

/**
 * Glue lines along pieces: of legs glued up from several, and of the piece that deepens the end of
 * a stretcher. Both faces are long grain, so a sound line is as strong as the wood beside it.
 */
public final class GlueLines {

  private final Inquiry inquiry;
  private final GlueLineFinding finding;

  private GlueLines(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.finding = new GlueLineFinding(inquiry);
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
    GlueLineFinding.Line line =
        new GlueLineFinding.Line(
            "glue-line-legs",
            "Glue lines of built-up legs",
            leg.name(),
            "line nearest to the middle of %s pieces stacked %s the bench"
                .formatted(made.count(), made.stacked().words()),
            List.of(new GlueLineFinding.Side(frame.leg().wood(), DesignQuantity.SHEAR)),
            leading,
            List.of(GlueLineFinding.SHEAR));
    return finding.judged(
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
    GlueLineFinding.Line line =
        new GlueLineFinding.Line(
            "glue-line-" + JointStrengthCheck.key(stretcher.name()),
            "Glue line of a deepened end",
            stretcher.name(),
            "the glued-on piece at its joint",
            List.of(new GlueLineFinding.Side(stretcher.wood(), DesignQuantity.SHEAR)),
            leading,
            List.of(
                GlueLineFinding.SHEAR,
                new GlueLineFinding.Shown("M", "moment at the joint", Unit.N_MM)));
    return finding.judged(
        line,
        result -> {
          double[] f = JointForcesAt.raw(spot, result);
          return new double[] {f[1], f[3]};
        },
        (pad, f) ->
            Laminations.gluedOn(pad, f[1], first, inertia, b, length)
                + Laminations.shear(pad, Math.abs(f[0]), first, inertia, b));
  }
}
