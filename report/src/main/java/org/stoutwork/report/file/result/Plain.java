package org.stoutwork.report.file.result;

import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.result.StiffnessRange;

/** Numbers as JSON has them; one without limit, such as a rigid joint's stiffness, is null. */
final class Plain {

  private Plain() {}

  static void number(JsonOut out, String key, double value) {
    if (Double.isFinite(value)) {
      out.put(key, value);
    } else {
      out.putNull(key);
    }
  }

  static void range(JsonOut out, String key, StiffnessRange range) {
    out.object(
        key,
        o -> {
          number(o, "low", range.low());
          number(o, "mean", range.mean());
          number(o, "high", range.high());
        });
  }
}
