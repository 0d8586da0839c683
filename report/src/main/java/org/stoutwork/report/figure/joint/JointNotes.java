package org.stoutwork.report.figure.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Peg;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.report.units.Amounts;

/** What the dimensions of a joint's drawing do not say, in words. */
public final class JointNotes implements Joint.Cases<List<String>> {

  private final Amounts amounts;

  private JointNotes(Amounts amounts) {
    this.amounts = amounts;
  }

  /** Notes on a joint, each without its full stop; may be empty. */
  public static List<String> of(Joint joint, Amounts amounts) {
    return joint.fold(new JointNotes(amounts));
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.1f°", value);
  }

  private static String several(int count, String one) {
    return count == 1 ? "one " + one : count + " " + one + "s";
  }

  private List<String> fit(Fit fit) {
    List<String> out = new ArrayList<>();
    if (fit instanceof Fit.Pegged p) {
      out.add(several(p.pegs(), "peg") + ", " + across(p.peg()));
      if (p.drawbored()) {
        out.add(
            "hole in the tenon " + amounts.length(p.offset()) + " nearer to the shoulder (dashed)");
      }
    } else if (fit instanceof Fit.Wedged w) {
      out.add(several(w.wedges(), "wedge") + " of " + degrees(w.angle()));
      out.add("mortise flared " + degrees(w.flare()) + " to each side for it");
    } else if (fit instanceof Fit.Dry d && d.play() > 0) {
      out.add("play along the mortise " + amounts.length(d.play()));
    }
    return out;
  }

  private String across(Peg peg) {
    return amounts.length(peg.diameter()) + " across";
  }

  @Override
  public List<String> mortiseAndTenon(MortiseAndTenon j) {
    return fit(j.fit());
  }

  @Override
  public List<String> bridle(Bridle j) {
    return fit(j.fit());
  }

  @Override
  public List<String> boltedTenon(BoltedTenon j) {
    BoltedTenon.Nut nut = j.nut();
    return List.of(
        several(j.bolts(), j.bolt().size() + " bolt")
            + (j.bolts() == 1 ? " with a washer " : " with washers ")
            + amounts.length(j.bolt().washer().outer())
            + " across",
        nut.round()
            ? "barrel nut "
                + amounts.length(nut.diameter())
                + " across, "
                + amounts.length(nut.length())
                + " long"
            : "nut in a slot, bearing "
                + amounts.length(nut.diameter())
                + " by "
                + amounts.length(nut.length()));
  }

  @Override
  public List<String> looseWedgeTenon(LooseWedgeTenon j) {
    return List.of(
        "loose wedge with a slope of " + degrees(j.angle()) + ", its thickness at mid-height");
  }

  @Override
  public List<String> halfLap(HalfLap j) {
    return screws(j.screws());
  }

  @Override
  public List<String> dowelledButt(DowelledButt j) {
    return List.of(several(j.count(), "dowel") + ", " + across(j.dowel()));
  }

  @Override
  public List<String> housing(Housing j) {
    return screws(j.screws());
  }

  @Override
  public List<String> screwedButt(ScrewedButt j) {
    return screws(Optional.of(j.screws()));
  }

  private List<String> screws(Optional<ScrewSet> set) {
    return set.map(
            s ->
                List.of(
                    several(
                            s.count(),
                            s.screw() instanceof CoachScrew ? "coach screw" : "wood screw")
                        + ", "
                        + amounts.length(s.screw().diameter())
                        + " across, "
                        + amounts.length(s.screw().length())
                        + " long",
                    s.pilot() > 0
                        ? "hole for the thread " + amounts.length(s.pilot())
                        : "no hole drilled for the thread"))
        .orElse(List.of());
  }

  @Override
  public List<String> statedSpring(StatedSpring j) {
    return List.of("stiffness stated by you; its sizes are not known, so it is not drawn");
  }
}
