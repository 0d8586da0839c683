package org.stoutwork.check.member;

/**
 * What is left of the bending strength of a member that may twist sideways out of the plane of its
 * stronger bending (lateral-torsional buckling).
 *
 * @param factor k_crit or C_L on the bending strength about the stronger axis, above 0 and up to 1
 * @param critical bending stress at which a perfect member would buckle so, MPa; infinite where it
 *     was not asked
 * @param tooSlender whether the code allows no member as slender as this one
 */
public record Lateral(double factor, double critical, boolean tooSlender) {

  /** A member that cannot buckle laterally: it is held, or no deeper than wide. */
  public static final Lateral NONE = new Lateral(1, Double.POSITIVE_INFINITY, false);

  /**
   * @throws IllegalArgumentException if the factor is not above 0 and up to 1, or the critical
   *     stress not above 0
   */
  public Lateral {
    if (!(factor > 0 && factor <= 1) || !(critical > 0)) {
      throw new IllegalArgumentException(
          ("lateral buckling leaves a part above 0 and up to 1 of the strength, at a critical"
                  + " stress above 0; given %s and %s MPa")
              .formatted(factor, critical));
    }
  }

  /** Whether the stress at which the member would buckle so is known, if nothing is lost too. */
  public boolean asked() {
    return critical < Double.POSITIVE_INFINITY;
  }

  /** Whether anything is lost. */
  public boolean counts() {
    return factor < 1 || tooSlender;
  }
}
