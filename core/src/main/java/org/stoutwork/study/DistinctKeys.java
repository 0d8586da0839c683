package org.stoutwork.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.check.Inquiry;
import org.stoutwork.result.CheckResult;

/** Numbers the keys of checks that were made for several actions of one kind. */
final class DistinctKeys {

  private DistinctKeys() {}

  /** The same checks; the second of a key gets {@code -2} at its end, and so on. */
  static List<CheckResult> of(Inquiry inquiry, List<CheckResult> checks) {
    Map<String, Integer> seen = new HashMap<>();
    List<CheckResult> out = new ArrayList<>();
    for (CheckResult check : checks) {
      int count = seen.merge(check.key(), 1, Integer::sum);
      out.add(count == 1 ? check : renamed(inquiry, check, check.key() + "-" + count));
    }
    return out;
  }

  private static CheckResult renamed(Inquiry inquiry, CheckResult check, String key) {
    if (check instanceof CheckResult.NotChecked open) {
      return new CheckResult.NotChecked(
          key, open.title(), open.part(), open.topic(), open.reason());
    }
    CheckResult.Checked c = (CheckResult.Checked) check;
    CheckResult.Checked out =
        new CheckResult.Checked(
            key,
            c.title(),
            c.part(),
            c.topic(),
            c.place(),
            c.demand(),
            c.capacity(),
            c.wording(),
            c.utilisation(),
            c.range(),
            c.load(),
            c.combination(),
            c.verdict(),
            c.note(),
            c.working());
    inquiry.behind(check).ifPresent(behind -> inquiry.keep(out, behind));
    return out;
  }
}
