package org.stoutwork.joint.screwed;

import java.util.List;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.fastener.placing.PilotHoles;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** What one screw carries: thread, head or washer, core, shear, and pull with shear. */
public final class ScrewCapacity extends FasteningCapacity<Screwing> {

  /** Pull-through strength at 350 kg/m³ of a countersunk head without declaration, MPa; memory. */
  private static final double PULL_THROUGH = 9;

  /** Core in tension on the allowable side: half of the tensile strength. */
  private static final double CORE_SAFETY = 2;

  private static final Formula STRAIGHT =
      Formula.define("u")
          .meaning("pull and shear together, added straight")
          .where("F_ax", "pull", Unit.N)
          .where("W", "pull-out capacity", Unit.N)
          .where("F_v", "shear", Unit.N)
          .where("Z", "shear capacity", Unit.N)
          .as("F_ax/W + F_v/Z")
          .source(Documents.nds("12.4, straight line on the safe side"));

  private static final Formula SHEAR_ALONE =
      Formula.define("u")
          .meaning("shear alone")
          .where("F_v", "shear", Unit.N)
          .where("R_v", "shear capacity", Unit.N)
          .as("F_v/R_v")
          .source(Source.derived("definition of utilisation"));

  private ScrewCapacity(
      Screwing screwing,
      StrengthFamily family,
      FastenerForces forces,
      List<Seat> head,
      List<Seat> point) {
    super(screwing, family, forces, head, point);
  }

  /**
   * The limits of the most used of some screws.
   *
   * @param forces of all of them
   * @param head where they sit in the piece under the heads; none to leave its distances out
   * @param point where they sit in the other piece; none to leave its distances out
   */
  public static List<JointLimit> utilisations(
      Screwing screwing,
      StrengthFamily family,
      FastenerForces forces,
      List<Seat> head,
      List<Seat> point,
      boolean keepWorkings) {
    Limits limits = new Limits(keepWorkings);
    ScrewCapacity c = new ScrewCapacity(screwing, family, forces, head, point);
    c.strengths(limits);
    c.rules(limits);
    return limits.list();
  }

  /** Adds the strengths and rules of some screws to the limits of a joint. */
  public static void add(
      Limits limits,
      Screwing screwing,
      StrengthFamily family,
      FastenerForces forces,
      List<Seat> head,
      List<Seat> point) {
    ScrewCapacity c = new ScrewCapacity(screwing, family, forces, head, point);
    c.strengths(limits);
    c.rules(limits);
  }

  /** Adds the rules alone, for screws that press a joint together until its glue is dry. */
  public static void addRules(
      Limits limits, Screwing screwing, StrengthFamily family, List<Seat> head, List<Seat> point) {
    new ScrewCapacity(screwing, family, RowForces.one(0, 0), head, point).rules(limits);
  }

  private void strengths(Limits limits) {
    limits.strength("thread pulling out", "screw", Unit.N, this::pull, this::withdrawal);
    limits.strength("head pulling through", "screw", Unit.N, this::pull, this::through);
    limits.strength("core of the screw in tension", "screw", Unit.N, this::pull, this::tension);
    limits.strength("screw yielding across", "screw", Unit.N, this::shear, this::lateral);
    limits.strength("pull and shear together", "screw", Unit.ONE, this::together, p -> 1);
  }

  private void rules(Limits limits) {
    limits.rule(
        "reach of the screw",
        "screw",
        fastening.screw() instanceof CoachScrew
            ? fastening.reach() - fastening.tip()
            : fastening.reach(),
        fastening.screw().leastReach() * fastening.screw().diameter(),
        Unit.MM,
        Documents.nds("12.1.4, 12.1.5: 4 D without the tip for coach screws, 6 D for wood screws"));
    pilotHole(limits);
    seats(limits);
    if (pull(Pad.blank()) > 0) {
      pulledSeat(limits);
    }
  }

  private void pilotHole(Limits limits) {
    boolean coach = fastening.screw() instanceof CoachScrew;
    double gravity = fastening.point().gravity();
    PilotHoles holes = coach ? PilotHoles.coachScrew(gravity) : PilotHoles.woodScrew(gravity);
    double d = coach ? fastening.screw().diameter() : core();
    Pilots.rule(limits, "screw", holes, d, fastening.pilot());
  }

  private double withdrawal(Pad pad) {
    double d = fastening.screw().diameter();
    double thread = fastening.thread();
    if (family instanceof StrengthFamily.Allowable a) {
      return allowableWithdrawal(pad, d, thread, a.loadDuration());
    }
    if (fastening.endGrain() || thread < 6 * d) {
      pad.remark(
          "EN 1995-1-1 counts no thread along the grain and none shorter than 6 d: nothing holds.");
      return 0;
    }
    return design(pad, ScrewWithdrawal.ec5(pad, d, thread, fastening.point().density(), 90, 1));
  }

  private double allowableWithdrawal(Pad pad, double d, double thread, double duration) {
    double gravity = fastening.point().gravity();
    if (fastening.screw() instanceof CoachScrew) {
      return ScrewWithdrawal.lag(pad, gravity, d, thread, duration, fastening.endGrain());
    }
    if (fastening.endGrain()) {
      pad.remark("The NDS counts no wood screw pulled from end grain.");
      return 0;
    }
    return ScrewWithdrawal.screw(pad, gravity, d, thread, duration);
  }

  private double through(Pad pad) {
    TimberStrength wood = fastening.head();
    boolean allowable = family instanceof StrengthFamily.Allowable;
    double head = fastening.screw().across();
    ScrewHole hole = fastening.hole();
    if (fastening.screw() instanceof CoachScrew) {
      return allowable
          ? Heads.washerAllowable(pad, head, hole, wood.fC90())
          : Heads.washer(pad, head, hole, wood.fC90());
    }
    double fitting =
        allowable
            ? Heads.pullThroughAllowable(pad, wood.gravity(), head, fastening.headThickness())
            : Heads.pullThrough(pad, PULL_THROUGH, head, wood.density());
    double d = fastening.screw().diameter();
    return design(pad, Heads.overHole(pad, fitting, head, d, hole));
  }

  private double tension(Pad pad) {
    double factor =
        family instanceof StrengthFamily.PartialFactors p ? p.gammaM2() / 0.9 : CORE_SAFETY;
    return Heads.core(pad, ultimate(), core(), factor);
  }

  private double together(Pad pad) {
    double pull = pull(pad);
    double shear = shear(pad);
    double along = Math.min(withdrawal(pad), through(pad));
    double across = lateral(pad);
    if (along == 0) {
      pad.remark("Nothing is counted against the pull, which is judged by itself: shear alone.");
      return pad.take(SHEAR_ALONE, shear, across);
    }
    return family instanceof StrengthFamily.Allowable
        ? pad.take(STRAIGHT, pull, along, shear, across)
        : Heads.together(pad, pull, along, shear, across);
  }

  @Override
  double core() {
    return fastening.core();
  }

  @Override
  double ultimate() {
    return fastening.screw().ultimate();
  }

  @Override
  double bendingYield() {
    return fastening.screw().bendingYield();
  }

  /** Bearing in drilled holes; screws above 6 mm bear as bolts do, at an angle to the grain. */
  @Override
  double bearing(Pad pad, TimberStrength wood, double degrees) {
    double d = fastening.effectiveDiameter();
    return d > Distances.SLENDER
        ? Embedment.ec5(pad, d, wood.density(), degrees, wood.hardwood())
        : Embedment.along(pad, d, wood.density());
  }
}
