package org.stoutwork.wood.moisture;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/** The formulas by which strength follows moisture content. */
final class MoistureLaw {

  /** Between air-dry and the intersection moisture content. */
  static final Formula LOGARITHMIC =
      Formula.define("P")
          .meaning("mean at the moisture content")
          .unit(Unit.MPA)
          .where("P_d", "air-dry mean", Unit.MPA)
          .where("P_g", "green mean", Unit.MPA)
          .where("M_d", "moisture content of the air-dry test", Unit.POINT)
          .where("M", "moisture content", Unit.POINT)
          .where("M_p", "intersection moisture content", Unit.POINT)
          .as("P_d*(P_d/P_g)^((M_d - M)/(M_p - M_d))")
          .source(Source.published("Wood Handbook FPL-GTR-190 (2010)", "eq. 5-3"));

  /** Above air-dry, where no green value is printed: straight through the change at 20 %. */
  static final Formula FROM_DRY =
      Formula.define("P")
          .meaning("mean at the moisture content")
          .unit(Unit.MPA)
          .where("P_d", "air-dry mean", Unit.MPA)
          .where("c", "relative change from 12 to 20 % moisture content", Unit.ONE)
          .where("M_d", "moisture content of the air-dry test", Unit.POINT)
          .where("M", "moisture content", Unit.POINT)
          .as("P_d*(1 + c*(M - M_d)/8)")
          .source(Source.projectDefault("straight line through the handbook's change at 20 %"));

  /** From specific gravity, where nothing is printed. */
  static final Formula ESTIMATE =
      Formula.define("P_d")
          .meaning("air-dry mean, four fifths of the mean of all species of that gravity")
          .unit(Unit.MPA)
          .where("a", "factor of the relation", Unit.MPA)
          .where("G", "specific gravity at 12 % moisture content", Unit.ONE)
          .where("b", "exponent of the relation", Unit.ONE)
          .as("0.8*a*G^b")
          .source(
              Source.projectDefault(
                  "Wood Handbook FPL-GTR-190 Table 5-11a from memory, with a fifth taken off"));

  private MoistureLaw() {}
}
