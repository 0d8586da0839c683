package org.stoutwork.wood;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * How a wood changes its size with moisture, across the growth rings (radial) and along them
 * (tangential).
 *
 * @param radial shrinkage from green to ovendry, % of the green size, from 0 to 20
 * @param tangential the same along the rings
 * @param radialCoefficient relative change of size per 1 % of moisture content, from 6 to 14 %
 * @param tangentialCoefficient the same along the rings
 */
public record Shrinkage(
    Property radial,
    Property tangential,
    Property radialCoefficient,
    Property tangentialCoefficient) {

  /**
   * @throws IllegalArgumentException if a unit is wrong or a value outside its range
   */
  public Shrinkage {
    require(radial, Unit.PERCENT, 20);
    require(tangential, Unit.PERCENT, 20);
    require(radialCoefficient, Unit.ONE, 0.01);
    require(tangentialCoefficient, Unit.ONE, 0.01);
  }

  /**
   * The relative change of size per 1 % of moisture content that goes with a total shrinkage: the
   * handbook's linear law between 0 and 30 % moisture content, taken at 10 %.
   *
   * @param total shrinkage from green to ovendry, %
   */
  public static Property coefficient(Property total) {
    Source source =
        new Source(
            "C = 1/(3000/S - 20), Wood Handbook FPL-GTR-190 eq. 13-2 at 10 %, from S of "
                + total.source().document(),
            "",
            total.mark().ofWorkedOut());
    return new Property(1 / (3000 / total.value() - 20), Unit.ONE, source);
  }

  /** The same with another radial shrinkage; its coefficient follows from it. */
  public Shrinkage withRadial(Property other) {
    return new Shrinkage(other, tangential, coefficient(other), tangentialCoefficient);
  }

  /** The same with another tangential shrinkage; its coefficient follows from it. */
  public Shrinkage withTangential(Property other) {
    return new Shrinkage(radial, other, radialCoefficient, coefficient(other));
  }

  private static void require(Property property, Unit unit, double most) {
    if (property.unit() != unit || !(property.value() > 0 && property.value() <= most)) {
      throw new IllegalArgumentException(
          "shrinkage must be above 0 and at most %s %s; it was %s"
              .formatted(most, unit.symbol(), property.line()));
    }
  }
}
