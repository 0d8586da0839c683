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
   * anything is lost, or where the critical stress counts though nothing is.
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
            .min(
                Comparator.comparing(
                    r -> of(part, r, duration, fm, Pad.blank()),
                    Comparator.comparingDouble(Lateral::factor)
                        .thenComparingDouble(Lateral::critical)))
            .orElseThrow();
    Lateral found = of(part, worst, duration, fm, Pad.blank());
    boolean allowable = inquiry.bench().basis() == BasisChoice.CLEAR_WOOD;
    if (pad.keepsLines() && (found.counts() || (allowable && found.asked()))) {
      if (found.counts()) {
        pad.remark(ENDS);
      }
      of(part, worst, duration, fm, pad);
    }
    return found;
  }

  private Lateral of(Part part, Rectangle r, DurationClass duration, double fm, Pad pad) {
    return inquiry.bench().basis() == BasisChoice.CLEAR_WOOD
        ? american(part, r, duration, fm, pad)
        : european(part, r, duration, pad);
  }

  private Lateral american(Part part, Rectangle r, DurationClass duration, double fm, Pad pad) {
    double e05 = value(part, duration, DesignQuantity.MODULUS_LOW, pad);
    double length = LateralBuckling.americanLength(pad, part.length(), Math.max(r.b(), r.h()));
    return LateralBuckling.american(pad, r, length, Column.minimum(pad, e05), fm);
  }

  private Lateral european(Part part, Rectangle r, DurationClass duration, Pad pad) {
    Strengths strengths = inquiry.strengths();
    OptionalDouble fmk = strengths.characteristicBending(part.wood());
    if (fmk.isEmpty()) {
      return Lateral.NONE;
    }
    boolean softwood = strengths.isSolidSoftwood(part.wood());
    // The lines of the shear modulus hold those of the modulus; softwood does not ask it.
    Pad ofModulus = softwood ? pad : Pad.blank();
    Pad ofShear = softwood ? Pad.blank() : pad;
    double e05 = value(part, duration, DesignQuantity.MODULUS_LOW, ofModulus);
    double g05 = value(part, duration, DesignQuantity.SHEAR_MODULUS_LOW, ofShear);
    boolean onEdge = part.kind() != PartKind.LEG;
    double h = Math.max(r.b(), r.h());
    double length = LateralBuckling.europeanLength(pad, part.length(), h, onEdge);
    return LateralBuckling.european(pad, r, length, softwood, fmk.getAsDouble(), e05, g05);
  }

  private double value(Part part, DurationClass duration, DesignQuantity what, Pad pad) {
    return pad.keepsLines()
        ? inquiry.strengths().explain(part.wood(), duration, what, pad).orElseThrow()
        : inquiry.strengths().value(part.wood(), duration, what).orElseThrow();
  }
}
