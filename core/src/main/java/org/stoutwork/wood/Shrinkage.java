package org.stoutwork.wood;

import org.stoutwork.quantity.Unit;

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

  private static void require(Property property, Unit unit, double most) {
    if (property.unit() != unit || !(property.value() > 0 && property.value() <= most)) {
      throw new IllegalArgumentException(
          "shrinkage must be above 0 and at most %s %s; it was %s"
              .formatted(most, unit.symbol(), property.line()));
    }
  }
}
