package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * A strip that is nailed to an edge in one row along its middle, by which the whole is lifted: the
 * nails are sheared, and as the lift acts in the middle of the strip's thickness, they are pulled
 * too while the strip leans on the upper or lower half of the edge.
 *
 * @param count nails
 * @param lift N
 * @param thickness of the strip, mm
 * @param height of the edge, mm
 */
public record HungForces(int count, double lift, double thickness, double height)
    implements FastenerForces {

  private static final Source STATICS =
      Source.derived(
          "statics: the strip leans on half of the edge, pressure falling to the middle");

  private static final Formula PULL =
      Formula.define("N")
          .meaning("pull on all nails by the lift in the middle of the strip")
          .unit(Unit.N)
          .where("G", "lift", Unit.N)
          .where("t", "thickness of the strip", Unit.MM)
          .where("h", "height of the edge", Unit.MM)
          .as("G*t/2/(h/3)")
          .source(STATICS);

  private static final Formula SHEAR =
      Formula.define("F_v")
          .meaning("shear of one nail")
          .unit(Unit.N)
          .where("G", "lift", Unit.N)
          .where("n", "nails", Unit.ONE)
          .as("G/n")
          .source(Source.derived("statics: across the row all share alike"));

  /** Checks that something hangs on nails. */
  public HungForces {
    if (count < 1 || !(lift >= 0 && thickness > 0 && height > 0)) {
      throw new IllegalArgumentException(
          "a nailed strip has 1 nail or more, a lift of 0 N or more and sizes above 0 mm; it had %s, %s, %s, %s"
              .formatted(count, lift, thickness, height));
    }
  }

  @Override
  public double pullOfOne(Pad pad, StrengthFamily family) {
    return Pulled.share(pad, pad.take(PULL, lift, thickness, height), count, family);
  }

  @Override
  public double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening) {
    return pad.take(SHEAR, lift, count);
  }
}
