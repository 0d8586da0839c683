package org.stoutwork.result;

/** The answer of a check, or of the whole bench. Ordered from the best to the worst. */
public enum Verdict {
  /** Holds, with something to spare. */
  ADEQUATE("adequate"),
  /** Holds by less than a tenth, or only at the favourable end of the joints' stiffness. */
  MARGINAL("marginal"),
  /** Nobody looked; the reason is said. */
  NOT_CHECKED("not checked"),
  /** Does not hold. */
  INADEQUATE("inadequate");

  /** Utilisation from which a check is marginal. */
  public static final double MARGINAL_FROM = 0.9;

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The verdict as it is printed. */
  public String words() {
    return words;
  }

  /** The verdict on one utilisation. */
  public static Verdict of(double utilisation) {
    if (!(utilisation <= 1)) {
      return INADEQUATE;
    }
    return utilisation >= MARGINAL_FROM ? MARGINAL : ADEQUATE;
  }

  /**
   * The verdict on a range over the joints' stiffness: the unfavourable end counts, but what holds
   * at the favourable end is marginal rather than inadequate. Where the softest joints leave the
   * demand without limit, it must hold at the mean too to be marginal.
   */
  public static Verdict of(StiffnessRange utilisation) {
    if (Utilisation.unlimited(utilisation.low()) && !(utilisation.mean() <= 1)) {
      return INADEQUATE;
    }
    Verdict worst = of(utilisation.largest());
    return worst == INADEQUATE && utilisation.smallest() <= 1 ? MARGINAL : worst;
  }

  /** The worse of two. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
