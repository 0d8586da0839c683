package org.stoutwork.joint.screwed;

import java.util.List;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.fastener.placing.PilotHoles;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** What one screw carries: thread, head or washer, core, shear, and pull with shear. */
public final class ScrewCapacity {

  /** Pull-through strength at 350 kg/m³ of a countersunk head without declaration, MPa; memory. */
  private static final double PULL_THROUGH = 9;

  /** Core in tension on the allowable side: half of the tensile strength. */
  private static final double CORE_SAFETY = 2;

  private static final Formula DESIGN =
      Formula.define("F_d")
          .meaning("design value")
          .unit(Unit.N)
          .where("F_k", "characteristic", Unit.N)
          .where("k_mod", "duration and moisture", Unit.ONE)
          .where("γ_M", "partial factor", Unit.ONE)
          .as("k_mod*F_k/γ_M")
          .source(Documents.ec5("2.4.3"));

  private static final Formula DURATION =
      Formula.define("F_a")
          .meaning("allowable value")
          .unit(Unit.N)
          .where("F", "at normal duration", Unit.N)
          .where("C_D", "load duration", Unit.ONE)
          .as("F*C_D")
          .source(Documents.nds("Table 11.3.1"));

  private static final Formula STRAIGHT =
      Formula.define("u")
          .meaning("pull and shear together, added straight")
          .where("F_ax", "pull", Unit.N)
          .where("W", "pull-out capacity", Unit.N)
          .where("F_v", "shear", Unit.N)
          .where("Z", "shear capacity", Unit.N)
          .as("F_ax/W + F_v/Z")
          .source(Documents.nds("12.4, straight line on the safe side"));

  private final Screwing screwing;
  private final StrengthFamily family;

  private ScrewCapacity(Screwing screwing, StrengthFamily family) {
    this.screwing = screwing;
    this.family = family;
  }

  /**
   * The limits of one screw.
   *
   * @param pull N, along the screw
   * @param shear N, across it
   */
  public static List<JointLimit> utilisations(
      Screwing screwing, StrengthFamily family, double pull, double shear, boolean keepWorkings) {
    ScrewCapacity c = new ScrewCapacity(screwing, family);
    Limits limits = new Limits(keepWorkings);
    limits.strength("thread pulling out", "screw", pull, Unit.N, c::withdrawal);
    limits.strength("head pulling through", "screw", pull, Unit.N, c::head);
    limits.strength("core of the screw in tension", "screw", pull, Unit.N, c::core);
    limits.strength("screw yielding across", "screw", shear, Unit.N, c::lateral);
    limits.strength(
        "pull and shear together", "screw", Unit.ONE, pad -> c.together(pad, pull, shear), p -> 1);
    limits.rule(
        "reach of the screw",
        "screw",
        screwing.penetration(),
        (screwing.screw() instanceof CoachScrew ? 4 : 6) * screwing.screw().diameter(),
        Unit.MM,
        Documents.nds("12.1.4, 12.1.5: 4 D for coach screws, 6 D for wood screws"));
    return limits.list();
  }

  /**
   * Whether the hole drilled for the thread is neither too narrow nor too wide.
   *
   * @param pilot diameter of the hole, mm; 0 for none
   */
  public static List<JointLimit> pilotHole(Screwing screwing, double pilot, boolean keepWorkings) {
    boolean coach = screwing.screw() instanceof CoachScrew;
    double gravity = screwing.point().gravity();
    PilotHoles holes = coach ? PilotHoles.coachScrew(gravity) : PilotHoles.woodScrew(gravity);
    double d = coach ? screwing.screw().diameter() : screwing.core();
    Limits limits = new Limits(keepWorkings);
    Pilots.rule(limits, "screw", holes, d, pilot);
    return limits.list();
  }

  private double design(Pad pad, double characteristic) {
    StrengthFamily.PartialFactors p = (StrengthFamily.PartialFactors) family;
    return pad.take(DESIGN, characteristic, p.kMod(), p.gammaM());
  }

  private double withdrawal(Pad pad) {
    double d = screwing.screw().diameter();
    double thread = screwing.thread();
    if (family instanceof StrengthFamily.Allowable a) {
      return allowableWithdrawal(pad, d, thread, a.loadDuration());
    }
    if (screwing.endGrain() || thread < 6 * d) {
      pad.remark(
          "EN 1995-1-1 counts no thread along the grain and none shorter than 6 d: nothing holds.");
      return 0;
    }
    return design(pad, ScrewWithdrawal.ec5(pad, d, thread, screwing.point().density(), 90, 1));
  }

  private double allowableWithdrawal(Pad pad, double d, double thread, double duration) {
    double gravity = screwing.point().gravity();
    if (screwing.screw() instanceof CoachScrew) {
      return ScrewWithdrawal.lag(pad, gravity, d, thread, duration, screwing.endGrain());
    }
    if (screwing.endGrain()) {
      pad.remark("The NDS counts no wood screw pulled from end grain.");
      return 0;
    }
    return ScrewWithdrawal.screw(pad, gravity, d, thread, duration);
  }

  private double head(Pad pad) {
    if (screwing.screw() instanceof CoachScrew coach) {
      return family instanceof StrengthFamily.Allowable
          ? Heads.washerAllowable(pad, coach.washer(), screwing.head().fC90())
          : Heads.washer(pad, coach.washer(), screwing.head().fC90());
    }
    double head = ((WoodScrew) screwing.screw()).head();
    if (family instanceof StrengthFamily.Allowable a) {
      double force =
          Heads.pullThroughAllowable(
              pad, screwing.head().gravity(), head, screwing.headThickness());
      return pad.take(DURATION, force, a.loadDuration());
    }
    return design(pad, Heads.pullThrough(pad, PULL_THROUGH, head, screwing.head().density()));
  }

  private double core(Pad pad) {
    double steel =
        screwing.screw() instanceof CoachScrew c
            ? c.ultimate()
            : ((WoodScrew) screwing.screw()).ultimate();
    double factor =
        family instanceof StrengthFamily.PartialFactors p ? p.gammaM2() / 0.9 : CORE_SAFETY;
    return Heads.core(pad, steel, screwing.core(), factor);
  }

  private double lateral(Pad pad) {
    if (family instanceof StrengthFamily.Allowable a) {
      double d = screwing.screw().diameter();
      double fem = Embedment.nds(pad, screwing.point().gravity(), d, screwing.pointAngle());
      double fes = Embedment.nds(pad, screwing.head().gravity(), d, screwing.headAngle());
      double angle = Math.max(screwing.headAngle(), screwing.pointAngle());
      double yield =
          NdsYield.single(
                  pad,
                  screwing.core(),
                  screwing.penetration(),
                  screwing.headThickness(),
                  fem,
                  fes,
                  bendingYield(),
                  angle)
              .least()
              .force();
      return pad.take(DURATION, yield, a.loadDuration());
    }
    return design(pad, johansen(pad));
  }

  private double bendingYield() {
    return screwing.screw() instanceof CoachScrew c
        ? c.bendingYield()
        : ((WoodScrew) screwing.screw()).bendingYield();
  }

  private double johansen(Pad pad) {
    double effective = 1.1 * screwing.core();
    double steel =
        screwing.screw() instanceof CoachScrew c
            ? c.ultimate()
            : ((WoodScrew) screwing.screw()).ultimate();
    double moment = Johansen.steelMoment(pad, steel, effective);
    double head = bearing(pad, effective, true);
    double point = bearing(pad, effective, false);
    return Johansen.single(
            pad,
            screwing.headThickness(),
            screwing.penetration(),
            effective,
            head,
            point,
            moment,
            0,
            0)
        .least()
        .force();
  }

  /** Bearing in drilled holes; screws above 6 mm bear as bolts do, at an angle to the grain. */
  private double bearing(Pad pad, double d, boolean head) {
    TimberStrength wood = head ? screwing.head() : screwing.point();
    double angle = head ? screwing.headAngle() : screwing.pointAngle();
    return d > 6
        ? Embedment.ec5(pad, d, wood.density(), angle, wood.hardwood())
        : Embedment.along(pad, d, wood.density());
  }

  private double together(Pad pad, double pull, double shear) {
    double along = Math.min(withdrawal(pad), head(pad));
    double across = lateral(pad);
    if (pull > 0 && along == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double safe = along == 0 ? 1 : along;
    return family instanceof StrengthFamily.Allowable
        ? pad.take(STRAIGHT, pull, safe, shear, across)
        : Heads.together(pad, pull, safe, shear, across);
  }
}
