package org.stoutwork.check.joint;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.check.UsePart;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.quantity.Measure;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;
import org.stoutwork.result.Wording;
import org.stoutwork.wood.time.DurationClass;

/**
 * The most used joint of its kind in one way of failing.
 *
 * @param spot where it is
 * @param rail wood of the piece that ends here
 * @param post wood of the piece it meets
 * @param limit that was found, joints at their mean stiffness
 * @param factors of the combination
 * @param leading action; null where none leads
 * @param duration of the shortest action
 */
record JointFinding(
    JointSpot spot,
    String rail,
    String post,
    JointLimit limit,
    Factors factors,
    Stand leading,
    DurationClass duration) {

  CheckResult make(Inquiry inquiry, JointStrengths strengths) {
    double use =
        limit.nature() == JointLimit.Nature.RULE ? 1 : inquiry.plan().criteria().strengthUse();
    StiffnessRange range =
        Utilisation.printable(
            inquiry.range(
                level -> utilisation(at(inquiry, strengths, level.level(), false)) / use));
    Met met = at(inquiry, strengths, JointLevel.MEAN, true).orElseThrow();
    JointLimit mean = met.limit();
    boolean rule = limit.nature() == JointLimit.Nature.RULE;
    String title = spot.joint().joint().title();
    CheckResult.Checked check =
        new CheckResult.Checked(
            "joint-" + JointStrengthCheck.key(spot.kind().words() + " " + limit.failure()),
            sentence(limit.failure()),
            spot.name(),
            Topic.JOINT,
            title + ": " + limit.place(),
            new Measure(mean.demand(), mean.unit()),
            new Measure(mean.capacity() * use, mean.unit()),
            new Wording(mean.least(), mean.of()),
            rule ? Utilisation.printable(mean.utilisation()) : range.largest(),
            rule ? Optional.empty() : Optional.of(range),
            rule ? "how the joint is made" : leading == null ? factors.words() : leading.words(),
            rule ? "" : factors.words(),
            rule ? Verdict.of(mean.utilisation()) : Verdict.of(range),
            rule
                ? "A rule of making: %s."
                    .formatted(
                        mean.least()
                            ? "the least that is asked for, against what is there"
                            : "what is there, against the most that is good")
                : Utilisation.noted("", range),
            UsePart.after(
                new JointPreface(inquiry, rail, post, duration)
                    .before(mean.working(), met.forces()),
                mean.utilisation(),
                use));
    return rule ? check : inquiry.keep(check, factors, leading);
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A limit under the forces that it was met by. */
  private record Met(JointLimit limit, JointForces forces) {}

  /** Where the forces do not ask for it at all, nothing of it is used. */
  private static double utilisation(Optional<Met> met) {
    return met.map(m -> m.limit().utilisation()).orElse(0.0);
  }

  /**
   * The same way of failing at one level of the joints' stiffness; empty if nothing asks for it.
   */
  private Optional<Met> at(
      Inquiry inquiry, JointStrengths strengths, JointLevel level, boolean keep) {
    double[] raw = inquiry.read(level, factors, leading, r -> JointForcesAt.raw(spot, r));
    Met worst = null;
    for (JointForces forces : JointForcesAt.both(spot, raw)) {
      List<JointLimit> limits =
          JointCapacities.utilisations(
              spot.joint().joint(),
              spot.setting(),
              strengths.of(rail, post, duration),
              forces,
              keep);
      for (JointLimit tried : limits) {
        boolean same =
            tried.failure().equals(limit.failure()) && tried.place().equals(limit.place());
        if (same && (worst == null || tried.utilisation() > worst.limit().utilisation())) {
          worst = new Met(tried, forces);
        }
      }
    }
    return Optional.ofNullable(worst);
  }
}
