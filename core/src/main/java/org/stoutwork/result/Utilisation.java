package org.stoutwork.result;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.stoutwork.quantity.Writing;

/**
 * Utilisations that can be printed. Where nothing carries a force, or a frame folds, demand over
 * capacity has no limit; a thousand stands for all that is so large that its size says nothing.
 */
public final class Utilisation {

  /** Stands for this much or more, and for what has no limit. */
  public static final double MOST = 1000;

  /** Said where a utilisation without limit was found at every stiffness of the joints. */
  public static final String NOTHING_CARRIES =
      "The demand is a thousand times what is there, or more: nothing here carries it.";

  /** Said where it was found with the joints at their softest only. */
  public static final String LOOSE_AT_SOFTEST =
      "With the joints at their softest the frame does not stand by itself.";

  private static final double ONE_DECIMAL_FROM = 9.995;
  private static final double NO_DECIMAL_FROM = 99.95;
  private static final double PLAIN_BELOW = 999.5;
  private static final int FINEST = 4;

  private Utilisation() {}

  /** The value, or {@link #MOST} where it is larger or no number. */
  public static double printable(double utilisation) {
    return utilisation <= MOST ? utilisation : MOST;
  }

  /**
   * A figure as it is printed everywhere: two decimals, fewer from 10 on. Where the rounded figure
   * would have another verdict than the figure itself, as 0.8999 or 1.0004 would, up to four.
   */
  public static String shown(double utilisation) {
    if (!(utilisation < PLAIN_BELOW)) {
      return "over\u00a0999";
    }
    if (utilisation >= ONE_DECIMAL_FROM) {
      return Writing.fixed(utilisation, utilisation >= NO_DECIMAL_FROM ? 0 : 1);
    }
    Verdict verdict = Verdict.of(utilisation);
    for (int decimals = 2; decimals <= FINEST; decimals++) {
      String text = Writing.fixed(utilisation, decimals);
      if (Verdict.of(Double.parseDouble(text)) == verdict) {
        return text;
      }
    }
    RoundingMode own = verdict == Verdict.INADEQUATE ? RoundingMode.CEILING : RoundingMode.FLOOR;
    return new BigDecimal(utilisation).setScale(FINEST, own).toPlainString();
  }

  /** All three made printable. */
  public static StiffnessRange printable(StiffnessRange range) {
    return range.each(Utilisation::printable);
  }

  /** Whether a value stands for one without limit. */
  public static boolean unlimited(double utilisation) {
    return !(utilisation < MOST);
  }

  /** A note with what has to be said of utilisations without limit. */
  public static String noted(String note, StiffnessRange range) {
    if (!unlimited(range.largest())) {
      return note;
    }
    String said = unlimited(range.mean()) ? NOTHING_CARRIES : LOOSE_AT_SOFTEST;
    return note.isEmpty() ? said : note + " " + said;
  }
}
