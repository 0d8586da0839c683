package org.stoutwork.joint;

import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;

/** Woods, screws and factors of the examples that are worked by hand, all unequal. */
final class ByHand {

  /** Softwood of 390 kg/m³ and specific gravity 0.47, 2.2 MPa across the grain. */
  static final TimberStrength SOFT =
      new TimberStrength(22, 13, 0.4, 18, 2.2, 2.4, 8, 390, 0.47, false, 10500, 70);

  /** Hardwood of 560 kg/m³ and specific gravity 0.61. */
  static final TimberStrength HARD =
      new TimberStrength(31, 18, 0.5, 23, 4.1, 3.1, 12, 560, 0.61, true, 12700, 110);

  static final StrengthFamily EC5 = new StrengthFamily.PartialFactors(0.7, 1.3, 1.15);
  static final StrengthFamily NDS = new StrengthFamily.Allowable(1.25, 2.2);

  /** 5.2 mm with a core of 3.5 mm, 83 mm long with 52 mm of thread, a head of 10.3 mm. */
  static final WoodScrew WOOD = new WoodScrew(5.2, 3.5, 83, 52, 10.3, 580, 640);

  /**
   * 10 mm with a core of 7.4 mm, 117 mm long with 62 mm of thread and a tip of 9 mm, a washer of 33
   * mm.
   */
  static final CoachScrew COACH = new CoachScrew(10, 7.4, 117, 62, 9, 310, 420, 33);

  private ByHand() {}
}
