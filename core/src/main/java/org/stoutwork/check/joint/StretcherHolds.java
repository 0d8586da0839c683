package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.working.Formula;

/**
 * What holds a stretcher or spine to the underside of the top: a line of glue, or screws. Each
 * length of the stretcher between two stations of the top is held by its own share.
 */
public final class StretcherHolds {

  /** Thread in the top and wood under the head where neither is stated, in diameters. */
  private static final double REACH = 6;

  private static final double PILOT = 0.55;

  private static final Formula SLIDING =
      Formula.define("τ")
          .meaning("shear along the line between stretcher and top")
          .unit(Unit.MPA)
          .where("F", "force that slides one on the other", Unit.N)
          .where("b", "width of the line", Unit.MM)
          .where("l", "length of the line that takes it", Unit.MM)
          .as("F/(b*l)")
          .source(Source.derived("statics: the share of one station of the top"));

  private final Inquiry inquiry;
  private final Stretcher stretcher;

  private StretcherHolds(Inquiry inquiry, Stretcher stretcher) {
    this.inquiry = inquiry;
    this.stretcher = stretcher;
  }

  /** The checks of every stretcher that is glued or screwed to the top. */
  public static List<CheckResult> all(Inquiry inquiry) {
    List<CheckResult> out = new ArrayList<>();
    for (Stretcher stretcher : inquiry.bench().stretchers()) {
      StretcherHolds holds = new StretcherHolds(inquiry, stretcher);
      if (stretcher.hold() instanceof LayerHold.Glued && !holds.contacts().isEmpty()) {
        out.add(holds.glued());
      } else if (stretcher.hold() instanceof LayerHold.Screwed screwed
          && !holds.contacts().isEmpty()) {
        out.addAll(holds.screwed(screwed));
      }
    }
    return out;
  }

  /** A place where the stretcher touches the top, and the length that falls to it, mm. */
  private record Contact(String bearing, double length) {}

  /** Push, shear across and shear along the bench at a place under an action. */
  private record Drawn(Contact contact, Stand leading) {
    double[] of(FrameResult result) {
      return result.member(contact.bearing()).start();
    }
  }

  private List<Contact> contacts() {
    BenchModel model = inquiry.at(JointLevel.MEAN).model();
    List<Contact> out = new ArrayList<>();
    for (String bearing : model.bearings()) {
      String on = bearing.substring("bearing of top on ".length());
      if (on.startsWith(stretcher.name() + " at ") || on.startsWith(stretcher.name() + ", bay ")) {
        String node = model.frame().members().get(bearing).from();
        double x = model.frame().nodes().get(node).x();
        out.add(new Contact(bearing, model.grid().reach(model.grid().stationNear(x))));
      }
    }
    return out;
  }

  /** The place and action under which something is greatest for the length that takes it. */
  private Drawn greatest(ToDoubleFunction<double[]> size) {
    Drawn found = null;
    double most = -1;
    for (Stand stand : inquiry.stands()) {
      FrameResult alone = inquiry.at(JointLevel.MEAN).alone(stand.unit());
      for (Contact contact : contacts()) {
        double[] f = alone.member(contact.bearing()).start();
        double[] scaled = {stand.force() * f[0], stand.force() * f[1], stand.force() * f[2]};
        double value = size.applyAsDouble(scaled) / contact.length();
        if (value > most) {
          most = value;
          found = new Drawn(contact, stand);
        }
      }
    }
    return found;
  }

  private static double shear(double[] f) {
    return Math.hypot(f[1], f[2]);
  }

  private CheckResult glued() {
    Drawn drawn = greatest(StretcherHolds::shear);
    boolean along = inquiry.bench().top().layers().get(0).grain() == Grain.ALONG;
    GlueLineFinding.Line line =
        new GlueLineFinding.Line(
            "glue-line-top-" + JointStrengthCheck.key(stretcher.name()),
            "Glue line between stretcher and top",
            stretcher.name(),
            drawn.contact().bearing().replace("bearing of top on ", ""),
            List.of(
                new GlueLineFinding.Side(stretcher.wood(), DesignQuantity.SHEAR),
                new GlueLineFinding.Side(
                    inquiry.bench().top().layers().get(0).wood(),
                    along ? DesignQuantity.SHEAR : DesignQuantity.ROLLING_SHEAR)),
            drawn.leading(),
            List.of(
                new GlueLineFinding.Shown("F_x", "force along the bench", Unit.N),
                new GlueLineFinding.Shown("F_y", "force across the bench", Unit.N)));
    double b = stretcher.thickness().mm();
    return new GlueLineFinding(inquiry)
        .judged(
            line,
            result -> new double[] {drawn.of(result)[2], drawn.of(result)[1]},
            (pad, f) -> pad.take(SLIDING, Math.hypot(f[0], f[1]), b, drawn.contact().length()));
  }

  private List<CheckResult> screwed(LayerHold.Screwed hold) {
    String top = inquiry.bench().top().layers().get(0).wood();
    String key = "stretcher-screws-" + JointStrengthCheck.key(stretcher.name());
    String missing = JointStrengthCheck.missing(inquiry, List.of(stretcher.wood(), top));
    if (!missing.isEmpty()) {
      return List.of(
          new CheckResult.NotChecked(
              key, "Screws of a stretcher", stretcher.name(), Topic.JOINT, missing));
    }
    List<CheckResult> out = new ArrayList<>();
    out.addAll(limits(hold, key, greatest(StretcherHolds::shear), false));
    Drawn pulled = greatest(f -> Math.max(0, -f[0]));
    out.addAll(limits(hold, key, pulled, true));
    return out;
  }

  private List<CheckResult> limits(
      LayerHold.Screwed hold, String key, Drawn drawn, boolean ofPull) {
    Factors factors = Factors.strength(inquiry.bench().basis());
    double[] f = inquiry.read(JointLevel.MEAN, factors, drawn.leading(), drawn::of);
    String top = inquiry.bench().top().layers().get(0).wood();
    JointStrength strength =
        new JointStrengths(inquiry).of(stretcher.wood(), top, drawn.leading().action().duration());
    double d = hold.diameter().mm();
    double count = hold.rows() * drawn.contact().length() / hold.spacing().mm();
    Screwing screwing =
        new Screwing(
            WoodScrew.plain(d, (2 * REACH + 1) * d, (REACH + 1) * d, 2 * d),
            REACH * d,
            strength.rail(),
            strength.post(),
            90,
            90,
            false,
            ScrewHole.round(d),
            PILOT * d);
    LimitResult results =
        new LimitResult(
            key,
            stretcher.name(),
            drawn.leading().words(),
            factors.words(),
            inquiry.plan().criteria().strengthUse());
    RowForces forces = RowForces.one(Math.max(0, -f[0]) / count, shear(f) / count);
    return ScrewCapacity.utilisations(
            screwing, strength.family(), forces, List.of(seat(hold)), List.of(), true)
        .stream()
        .filter(limit -> !limit.failure().matches("hole.*|reach.*"))
        .filter(limit -> isOfPull(limit) == ofPull)
        .map(results::of)
        .toList();
  }

  private static boolean isOfPull(JointLimit limit) {
    return limit.failure().matches("thread.*|head.*|core.*|pull and.*");
  }

  /**
   * Rows stand side by side, evenly over the thickness of the stretcher, and end half of their
   * spacing from its ends.
   */
  private Seat seat(LayerHold.Screwed hold) {
    double none = Double.POSITIVE_INFINITY;
    double thickness = stretcher.thickness().mm();
    return new Seat(
        "stretcher",
        hold.spacing().mm() / 2,
        thickness / (2 * hold.rows()),
        hold.spacing().mm(),
        hold.rows() == 1 ? none : thickness / hold.rows(),
        0,
        REACH);
  }
}
