package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Fit;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.Wedging;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/** Wedges driven into a tenon. */
final class WedgeCapacity {

  private static final Source CYCLES =
      Source.commonPractice("a wedge that lives through seasons is held three times over");

  private WedgeCapacity() {}

  static void all(MortiseAndTenon joint, Fit.Wedged fit, Case with) {
    double length = joint.lengthInPost(with.members());
    double thickness = joint.thickness() * joint.count();
    double contact = Math.min(fit.kerf(), length);
    if (!fit.glued()) {
      with.limits()
          .strength(
              "wedged tenon pulling out",
              "wedge",
              with.forces().tension(),
              Unit.N,
              pad -> pullOut(pad, fit, with, thickness, contact));
    }
    with.limits()
        .strength(
            "tenon tearing beside its kerfs",
            "tenon",
            with.forces().tension(),
            Unit.N,
            pad ->
                Splitting.netTension(
                    pad,
                    Splitting.Cut.KERFS,
                    with.rail().fT0(),
                    joint.height(),
                    2.0 * fit.wedges(),
                    thickness));
    locking(fit, with);
    spreading(fit, with);
  }

  private static double pullOut(
      Pad pad, Fit.Wedged fit, Case with, double thickness, double contact) {
    double crushed =
        Wedging.withdrawal(
            pad, with.rail().fC90(), thickness, contact, fit.flare(), Wedging.HOLDING_FRICTION);
    return Math.min(crushed, Wedging.flareShear(pad, with.rail().fV(), thickness, contact));
  }

  private static void locking(Fit.Wedged fit, Case with) {
    with.limits()
        .least(
            "wedge holding by friction",
            "wedge",
            Unit.ONE,
            pad -> pad.given("n_req", "times it must hold", Wedging.SAFE_LOCK, Unit.ONE, CYCLES),
            pad -> Wedging.lock(pad, Wedging.HOLDING_FRICTION, fit.angle()));
  }

  private static void spreading(Fit.Wedged fit, Case with) {
    double fm = with.rail().bendingMean() > 0 ? with.rail().bendingMean() : with.rail().fM();
    with.limits()
        .rule(
            "leaf of the tenon breaking as it is spread",
            "tenon",
            Unit.ONE,
            pad -> Wedging.strain(pad, fit.leaf(), fit.spread(), fit.kerf()),
            pad -> {
              pad.remark(
                  "The wedge must spread the tenon along the post's grain, never across it.");
              return Wedging.strainLimit(pad, fm, with.rail().modulus());
            });
  }
}
