package org.stoutwork.wood.design;

import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Mark;
import org.stoutwork.wood.Property;

/** The safety format of a check. One check uses one basis throughout. */
public sealed interface DesignBasis {

  /** The basis in words. */
  String words();

  /**
   * Allowable stresses from the means of clear wood: the 5 % exclusion value over a divisor that
   * holds safety and ten years of load, times ratios for growth and duration.
   */
  record ClearWoodAllowable() implements DesignBasis {
    @Override
    public String words() {
      return "clear-wood allowable";
    }
  }

  /**
   * Design strengths from characteristic values of a strength class: k_mod X_k / γ_M.
   *
   * @param gammaM a partial factor of the user's own, such as one from a national annex, in place
   *     of the recommended ones; empty takes those
   */
  record PartialFactors(Optional<Property> gammaM) implements DesignBasis {

    /**
     * @throws IllegalArgumentException if a factor of the user's own is below 1, has a unit, or is
     *     not marked as the user's
     */
    public PartialFactors {
      gammaM.ifPresent(PartialFactors::requireFactor);
    }

    private static void requireFactor(Property factor) {
      if (factor.unit() != Unit.ONE
          || !(factor.value() >= 1 && factor.value() <= 3)
          || factor.mark() != Mark.YOURS) {
        throw new IllegalArgumentException(
            "a partial factor of your own lies from 1 to 3, has no unit and names its source;"
                + " it was "
                + factor.line());
      }
    }

    /** With the recommended partial factors of EN 1995-1-1. */
    public static PartialFactors recommended() {
      return new PartialFactors(Optional.empty());
    }

    @Override
    public String words() {
      return "partial factors";
    }
  }
}
