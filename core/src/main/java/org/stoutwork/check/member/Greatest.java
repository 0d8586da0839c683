package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.wood.time.DurationClass;

/**
 * Passes over forces that cannot govern. Every utilisation grows with the size of each force, so a
 * combination in which no force is greater than in one already looked at, of the same duration and
 * with the same sense of axial force, need not be looked at again.
 */
final class Greatest {

  private final Map<DurationClass, List<double[]>> pulled = new EnumMap<>(DurationClass.class);
  private final Map<DurationClass, List<double[]>> pressed = new EnumMap<>(DurationClass.class);
  private final int[] counted;

  private Greatest(int... counted) {
    this.counted = counted;
  }

  /** For bending with axial force: N, My, Mz count. */
  static Greatest ofBending() {
    return new Greatest(0, 4, 5);
  }

  /** For shear: Vy, Vz count. */
  static Greatest ofShear() {
    return new Greatest(1, 2);
  }

  /** Whether these forces may govern; they are remembered if so. */
  boolean mayGovern(DurationClass duration, double[] forces) {
    List<double[]> seen =
        (forces[0] >= 0 ? pulled : pressed).computeIfAbsent(duration, d -> new ArrayList<>());
    // From the last: what governs at one place often governs at the next.
    for (int k = seen.size() - 1; k >= 0; k--) {
      if (isCovered(forces, seen.get(k))) {
        return false;
      }
    }
    int left = 0;
    for (int k = 0; k < seen.size(); k++) {
      if (!isCovered(seen.get(k), forces)) {
        seen.set(left++, seen.get(k));
      }
    }
    seen.subList(left, seen.size()).clear();
    seen.add(forces);
    return true;
  }

  private boolean isCovered(double[] forces, double[] other) {
    for (int i : counted) {
      if (Math.abs(forces[i]) > Math.abs(other[i])) {
        return false;
      }
    }
    return true;
  }
}
