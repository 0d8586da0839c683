package org.stoutwork.check.member;

import java.util.Comparator;
import java.util.OptionalDouble;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Strengths;
import org.stoutwork.section.Rectangle;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;

/**
 * How far the parts of a bench may buckle laterally while they are bent. A part is taken as kept
 * from turning about its axis at its ends only: a rail or stretcher where its shoulders stand, a
 * leg or foot at its own ends. What the top or a shelf holds between is not counted. Loads may
 * stand on the pressed edge of all parts but legs. The strips of a top hold each other.
 */
final class LateralOfParts {

  private static final String ENDS =
      "The member is deep and thin: bent on edge it may twist out sideways (lateral buckling). It is"
          + " taken as kept from turning about its axis at its ends only.";

  private final Inquiry inquiry;

  LateralOfParts(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /**
   * What lateral buckling leaves of a part in its most slender piece. Lines are written only where
   * anything is lost.
   *
   * @param fm bending strength under the duration, MPa
   */
  Lateral of(Part part, DurationClass duration, double fm, Pad pad) {
    if (part.kind() == PartKind.TOP) {
      return Lateral.NONE;
    }
    Rectangle worst =
        part.pieces().stream()
            .map(Piece::section)
            .distinct()
            .min(Comparator.comparingDouble(r -> of(part, r, duration, fm, Pad.blank()).factor()))
            .orElseThrow();
    Lateral found = of(part, worst, duration, fm, Pad.blank());
    if (found.counts() && pad.keepsLines()) {
      pad.remark(ENDS);
      of(part, worst, duration, fm, pad);
    }
    return found;
  }

  private Lateral of(Part part, Rectangle r, DurationClass duration, double fm, Pad pad) {
    Strengths strengths = inquiry.strengths();
    double e05 = value(part, duration, DesignQuantity.MODULUS_LOW, pad);
    double h = Math.max(r.b(), r.h());
    if (inquiry.bench().basis() == BasisChoice.CLEAR_WOOD) {
      double length = LateralBuckling.americanLength(pad, part.length(), h);
      return LateralBuckling.american(pad, r, length, Column.minimum(pad, e05), fm);
    }
    OptionalDouble fmk = strengths.characteristicBending(part.wood());
    if (fmk.isEmpty()) {
      return Lateral.NONE;
    }
    boolean onEdge = part.kind() != PartKind.LEG;
    return LateralBuckling.european(
        pad,
        r,
        LateralBuckling.europeanLength(pad, part.length(), h, onEdge),
        strengths.isSolidSoftwood(part.wood()),
        fmk.getAsDouble(),
        e05,
        value(part, duration, DesignQuantity.SHEAR_MODULUS_LOW, pad));
  }

  private double value(Part part, DurationClass duration, DesignQuantity what, Pad pad) {
    return pad.keepsLines()
        ? inquiry.strengths().explain(part.wood(), duration, what, pad).orElseThrow()
        : inquiry.strengths().value(part.wood(), duration, what).orElseThrow();
  }
}
