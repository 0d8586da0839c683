package org.stoutwork.joint.setting;

/** The family of formulas a joint is judged by; never mixed within one check. */
public sealed interface StrengthFamily {

  /** Short name for remarks. */
  String title();

  /** Part k_cr of the width that counts for shear beside cracks, with its shear strength. */
  double crackFactor();

  /**
   * Partial factors, EN 1995-1-1.
   *
   * @param kMod for the shortest action and the service class
   * @param gammaM for connections, 1.3 recommended
   * @param gammaM2 for steel in tension, 1.25 recommended
   */
  record PartialFactors(double kMod, double gammaM, double gammaM2) implements StrengthFamily {

    /** Checks the factors. */
    public PartialFactors {
      if (!(kMod > 0 && kMod <= 1.1 && gammaM >= 1 && gammaM2 >= 1)) {
        throw new IllegalArgumentException(
            "k_mod must lie in (0, 1.1] and γ_M, γ_M2 be at least 1; they were %s, %s, %s"
                .formatted(kMod, gammaM, gammaM2));
      }
    }

    @Override
    public String title() {
      return "EN 1995-1-1";
    }

    /** Of solid and glued laminated timber, 6.1.7. */
    @Override
    public double crackFactor() {
      return 0.67;
    }
  }

  /**
   * Allowable stresses, NDS and clear-wood means.
   *
   * @param loadDuration C_D; 1 for ten years
   * @param divisor from a 5 % value of clear wood to an allowable one, 2.1 to 2.3
   */
  record Allowable(double loadDuration, double divisor) implements StrengthFamily {

    /** Checks the factors. */
    public Allowable {
      if (!(loadDuration > 0 && loadDuration <= 2 && divisor >= 1)) {
        throw new IllegalArgumentException(
            "C_D must lie in (0, 2] and the divisor be at least 1; they were %s, %s"
                .formatted(loadDuration, divisor));
      }
    }

    @Override
    public String title() {
      return "NDS";
    }

    /** Allowable shear stresses allow for checks already. */
    @Override
    public double crackFactor() {
      return 1;
    }
  }
}
