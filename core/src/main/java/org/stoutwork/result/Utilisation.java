package org.stoutwork.result;

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

  private Utilisation() {}

  /** The value, or {@link #MOST} where it is larger or no number. */
  public static double printable(double utilisation) {
    return utilisation <= MOST ? utilisation : MOST;
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
