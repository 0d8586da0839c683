package org.stoutwork.assembly;

import org.stoutwork.bench.BasisChoice;
import org.stoutwork.wood.design.DesignBasis;

/** From the basis that a maker chooses to the one that the wood tables know. */
public final class Bases {

  private Bases() {}

  /** The basis, with recommended partial factors. */
  public static DesignBasis of(BasisChoice choice) {
    return switch (choice) {
      case CLEAR_WOOD -> new DesignBasis.ClearWoodAllowable();
      case PARTIAL_FACTORS -> DesignBasis.PartialFactors.recommended();
    };
  }
}
