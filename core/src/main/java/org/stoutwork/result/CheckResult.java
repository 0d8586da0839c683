package org.stoutwork.result;

import java.util.Optional;
import org.stoutwork.quantity.Measure;
import org.stoutwork.working.Working;

/** The outcome of one check. */
public sealed interface CheckResult {

  /** Stable name for programs, lower-case words joined by hyphens. */
  String key();

  /** What was looked at, for people. */
  String title();

  /** The part it concerns. */
  String part();

  /** What kind of question it answers. */
  Topic topic();

  /** The verdict. */
  Verdict verdict();

  /**
   * A check that came to a number.
   *
   * @param key stable name
   * @param title for people
   * @param part that governs
   * @param topic what kind of question it answers
   * @param place where on the part
   * @param demand what is asked of it
   * @param capacity what it can give
   * @param wording how the two are put into words
   * @param utilisation demand over capacity at the joints' unfavourable stiffness
   * @param range utilisation at low, mean and high stiffness of the joints, where it depends on it
   * @param load that governs, with its place
   * @param combination of actions with their factors
   * @param verdict on the whole range
   * @param note what a reader should know besides; may be empty
   * @param working line by line
   */
  record Checked(
      String key,
      String title,
      String part,
      Topic topic,
      String place,
      Measure demand,
      Measure capacity,
      Wording wording,
      double utilisation,
      Optional<StiffnessRange> range,
      String load,
      String combination,
      Verdict verdict,
      String note,
      Working working)
      implements CheckResult {}

  /**
   * A question that was not answered, with the reason.
   *
   * @param key stable name
   * @param title for people
   * @param part it concerns
   * @param topic what kind of question it is
   * @param reason why not, and what to do
   */
  record NotChecked(String key, String title, String part, Topic topic, String reason)
      implements CheckResult {
    @Override
    public Verdict verdict() {
      return Verdict.NOT_CHECKED;
    }
  }
}
