package org.stoutwork.check.joint;

import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Lipping;
import org.stoutwork.check.Inquiry;
import org.stoutwork.fastener.Nail;
import org.stoutwork.joint.screwed.HungForces;
import org.stoutwork.joint.screwed.NailCapacity;
import org.stoutwork.joint.screwed.Nailing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.wood.time.DurationClass;

/**
 * The nails of a nailed lipping. The bench is lifted by it: half of its mass hangs on the nails of
 * one edge, and pulls them too, for it acts in the middle of the lipping. The weight counts with
 * the factor of permanent loads, the strength with that of the short time of lifting. No other
 * action is looked at. Nails stand along the middle of the edge, the first and the last equally far
 * from its ends.
 */
public final class LippingNails {

  private static final double WIRE = 600;
  private static final double HEAD = 2;
  private static final double ACROSS_THE_GRAIN = 90;

  private LippingNails() {}

  /** The limits of the nails; none without a nailed lipping. */
  public static List<CheckResult> all(Inquiry inquiry) {
    Bench bench = inquiry.bench();
    if (bench.top().lipping().isEmpty()
        || !(bench.top().lipping().get().hold() instanceof Lipping.Hold.Nailed nails)) {
      return List.of();
    }
    Lipping lipping = bench.top().lipping().get();
    String wood = bench.top().layers().get(0).wood();
    String missing = JointStrengthCheck.missing(inquiry, List.of(wood));
    if (!missing.isEmpty()) {
      return List.of(
          new CheckResult.NotChecked(
              "lipping-nails", "Nails of the lipping", "lipping", Topic.JOINT, missing));
    }
    JointStrength strength = new JointStrengths(inquiry).of(wood, wood, DurationClass.SHORT);
    Factors factors = Factors.alone(bench.basis());
    boolean ends = lipping.edges() == Lipping.Edges.ENDS;
    double edge = ends ? bench.top().width().mm() : bench.top().length().mm();
    double d = nails.diameter().mm();
    double count = Math.max(2, Math.floor(edge / nails.spacing().mm()));
    double kg = inquiry.masses().values().stream().mapToDouble(Double::doubleValue).sum();
    Nailing nailing =
        new Nailing(
            new Nail(d, nails.length().mm(), HEAD * d, WIRE),
            lipping.thickness().mm(),
            strength.rail(),
            strength.post(),
            ends,
            Math.min(d, nails.pilot().mm()));
    String lifted =
        "the bench of %s lifted by its lipping, half of it on %s nails"
            .formatted(Writing.with(kg, Unit.KG, 3), Writing.number(count, 3));
    LimitResult results =
        new LimitResult(
            "lipping", "lipping", lifted, factors.words(), inquiry.plan().criteria().strengthUse());
    double lift = factors.permanent() * kg * TopLoads.GRAVITY / 2;
    Seat seat =
        new Seat(
            "lipping",
            (edge - (count - 1) * nails.spacing().mm()) / 2,
            bench.top().thicknessMm() / 2,
            nails.spacing().mm(),
            Double.POSITIVE_INFINITY,
            ACROSS_THE_GRAIN,
            lipping.thickness().mm() / d);
    HungForces forces =
        new HungForces((int) count, lift, lipping.thickness().mm(), bench.top().thicknessMm());
    return NailCapacity.utilisations(nailing, strength.family(), forces, List.of(seat), true)
        .stream()
        .filter(limit -> limit.demand() > 0)
        .map(results::of)
        .toList();
  }
}
