package org.stoutwork.joint.screwed;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What screws and nails have in common: how a row shares its forces, how a fastener yields across
 * its shank, how a force is brought to design level, and where the row must sit.
 *
 * @param <F> the kind of fastening
 */
abstract class FasteningCapacity<F extends Fastening> {

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

  private static final Formula THIRD =
      Formula.define("F_{v,end}")
          .meaning("shear of a smooth nail in end grain; screws are taken alike")
          .unit(Unit.N)
          .where("F_v", "shear in side grain", Unit.N)
          .as("F_v/3")
          .source(Documents.ec5("8.3.1.2(4)"));

  private static final Formula ADJUSTED =
      Formula.define("Z′")
          .meaning("shear with its factors of place")
          .unit(Unit.N)
          .where("Z", "shear of one fastener", Unit.N)
          .where("C_eg", "0.67 in end grain", Unit.ONE)
          .where("C_Δ", "geometry factor", Unit.ONE)
          .as("Z*C_eg*C_Δ")
          .source(Documents.nds("Table 11.3.1, 12.5.2"));

  private static final Formula LESS_TIP =
      Formula.define("l_m")
          .meaning("length that bears on the point side, reaching in by less than 10 D")
          .unit(Unit.MM)
          .where("p", "reach with the tip", Unit.MM)
          .where("E", "length of the tapered tip", Unit.MM)
          .as("p - E/2")
          .source(Documents.nds("12.3.5.3"));

  /** Reach in diameters from which the tip counts whole, NDS 12.3.5.3, from memory. */
  private static final double LONG = 10;

  private static final double END_GRAIN = 0.67;

  final F fastening;
  final StrengthFamily family;
  private final FastenerForces forces;
  private final List<Seat> head;
  private final List<Seat> point;

  FasteningCapacity(
      F fastening,
      StrengthFamily family,
      FastenerForces forces,
      List<Seat> head,
      List<Seat> point) {
    this.fastening = fastening;
    this.family = family;
    this.forces = forces;
    this.head = head;
    this.point = point;
  }

  /** Diameter that bends in the yield modes of the NDS, mm. */
  abstract double core();

  /** Tensile strength of the steel, MPa. */
  abstract double ultimate();

  /** Bending yield strength of the steel, MPa. */
  abstract double bendingYield();

  /** Bearing strength of one of the pieces by EN 1995-1-1, MPa. */
  abstract double bearing(Pad pad, TimberStrength wood, double degrees);

  final double design(Pad pad, double force) {
    return family instanceof StrengthFamily.PartialFactors p
        ? pad.take(DESIGN, force, p.kMod(), p.gammaM())
        : pad.take(DURATION, force, ((StrengthFamily.Allowable) family).loadDuration());
  }

  final double pull(Pad pad) {
    return forces.pullOfOne(pad, family);
  }

  final double shear(Pad pad) {
    return forces.shearOfOne(pad, family, fastening);
  }

  /** Shear that one fastener carries, N. */
  final double lateral(Pad pad) {
    if (family instanceof StrengthFamily.Allowable) {
      return allowable(pad, design(pad, ndsYield(pad)));
    }
    double yield =
        Johansen.single(
                pad,
                fastening.headThickness(),
                fastening.reach(),
                fastening.effectiveDiameter(),
                bearing(pad, fastening.head(), fastening.headAngle()),
                bearing(pad, fastening.point(), fastening.pointAngle()),
                Johansen.steelMoment(pad, ultimate(), fastening.effectiveDiameter()),
                0,
                0)
            .least()
            .force();
    return design(pad, fastening.endGrain() ? pad.take(THIRD, yield) : yield);
  }

  private double ndsYield(Pad pad) {
    double d = fastening.fastener().diameter();
    double fem = Embedment.nds(pad, fastening.point().gravity(), d, fastening.pointAngle());
    double fes = Embedment.nds(pad, fastening.head().gravity(), d, fastening.headAngle());
    double angle = Math.max(fastening.headAngle(), fastening.pointAngle());
    return NdsYield.single(
            pad,
            core(),
            bearingLength(pad),
            fastening.headThickness(),
            fem,
            fes,
            bendingYield(),
            NdsYield.Reduction.ofThreaded(d, core(), angle))
        .least()
        .force();
  }

  /** Long fasteners count with their tip, shorter ones with half of it. */
  private double bearingLength(Pad pad) {
    double reach = fastening.reach();
    return reach >= LONG * fastening.fastener().diameter()
        ? reach
        : pad.take(LESS_TIP, reach, fastening.tip());
  }

  private double allowable(Pad pad, double force) {
    double place =
        Math.min(place(pad, head, fastening.head()), place(pad, point, fastening.point()));
    double grain = fastening.endGrain() ? END_GRAIN : 1;
    return place * grain == 1 ? force : pad.take(ADJUSTED, force, grain, place);
  }

  private double place(Pad pad, List<Seat> seats, TimberStrength wood) {
    double least = 1;
    for (Seat seat : seats) {
      least = Math.min(least, Seating.factor(pad, fastening, seat, wood));
    }
    return least;
  }

  /** The rules of where the row sits, in both pieces. */
  final void seats(Limits limits) {
    Pad pad = Pad.blank();
    Seating seating = new Seating(limits, fastening, family, shear(pad) / lateral(pad));
    head.forEach(seat -> seating.shear(seat, fastening.head()));
    point.forEach(seat -> seating.shear(seat, fastening.point()));
  }

  /** The rules of where a pulled row sits in the piece that holds it. */
  final void pulledSeat(Limits limits) {
    point.forEach(seat -> new Seating(limits, fastening, family, 0).pull(seat));
  }
}
