package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** How fasteners that are pulled together share the pull. */
final class Pulled {

  private static final Formula SHARE =
      Formula.define("F_1")
          .meaning("pull of one fastener")
          .unit(Unit.N)
          .where("N", "pull", Unit.N)
          .where("n_ef", "fasteners that count", Unit.ONE)
          .as("N/n_ef")
          .source(Source.derived("statics"));

  private Pulled() {}

  static double share(Pad pad, double pull, int count, StrengthFamily family) {
    boolean fewer = count > 1 && family instanceof StrengthFamily.PartialFactors;
    return pad.take(SHARE, pull, fewer ? ScrewWithdrawal.effectiveNumber(pad, count) : count);
  }
}
