package org.stoutwork.check.joint;

import java.util.Locale;
import java.util.Optional;
import org.stoutwork.check.UsePart;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.quantity.Measure;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;
import org.stoutwork.result.Wording;

/**
 * Turns the limits of screws and nails into checks.
 *
 * @param key that the keys of the checks begin with
 * @param part they concern
 * @param load that governs
 * @param combination in which it stands
 * @param use part of the strength that may be used
 */
record LimitResult(String key, String part, String load, String combination, double use) {

  CheckResult of(JointLimit limit) {
    boolean rule = limit.nature() == JointLimit.Nature.RULE;
    double part = rule ? 1 : use;
    double utilisation = Utilisation.printable(limit.utilisation() / part);
    String failure = limit.failure();
    return new CheckResult.Checked(
        key + "-" + JointStrengthCheck.key(failure),
        failure.substring(0, 1).toUpperCase(Locale.ROOT) + failure.substring(1),
        part(),
        Topic.JOINT,
        limit.place(),
        new Measure(limit.demand(), limit.unit()),
        new Measure(limit.capacity() * part, limit.unit()),
        new Wording(limit.least(), limit.of()),
        utilisation,
        Optional.empty(),
        rule ? "how it is made" : load,
        rule ? "" : combination,
        Verdict.of(utilisation),
        rule ? "A rule of making." : "",
        UsePart.after(limit.working(), limit.utilisation(), part));
  }
}
