package org.stoutwork.joint;

import java.util.List;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.working.Line;

/** Picks out of limits what a test looks at. */
final class Found {

  private Found() {}

  /** The limit of that name; the names there are if there is none. */
  static JointLimit named(List<JointLimit> limits, String failure) {
    return limits.stream()
        .filter(limit -> limit.failure().equals(failure))
        .findFirst()
        .orElseThrow(() -> new AssertionError(limits.stream().map(JointLimit::failure).toList()));
  }

  /** Whether a remark of the working holds these words. */
  static boolean remarks(JointLimit limit, String words) {
    return limit.working().lines().stream()
        .anyMatch(line -> line instanceof Line.Remark remark && remark.text().contains(words));
  }
}
