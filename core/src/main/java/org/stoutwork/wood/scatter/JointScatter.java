package org.stoutwork.wood.scatter;

/**
 * Stiffness and strength of one piece, which scatter together: stiff pieces tend to be strong.
 *
 * @param stiffness distribution of the modulus, MPa
 * @param strength distribution of the strength, MPa
 * @param correlation between the logarithms, from −1 to 1
 */
public record JointScatter(Lognormal stiffness, Lognormal strength, double correlation) {

  /**
   * @throws IllegalArgumentException if the correlation is outside −1 to 1
   */
  public JointScatter {
    if (!(correlation >= -1 && correlation <= 1)) {
      throw new IllegalArgumentException(
          "a correlation lies from -1 to 1; it was %s".formatted(correlation));
    }
  }

  /** The strength of a piece, from two independent standard normal numbers. */
  public double strengthAt(double ofStiffness, double ofItsOwn) {
    double rest = Math.sqrt(1 - correlation * correlation);
    return strength.at(correlation * ofStiffness + rest * ofItsOwn);
  }
}
