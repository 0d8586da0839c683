package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.bench.DefaultTaken;

/**
 * Says once what all end frames took alike, as {@code endFrames.legs.along}; what only some of them
 * took, or what differs, keeps the number of its frame: {@code endFrames[1].legs.along}.
 */
final class SharedDefaults {

  private static final Pattern OF_ONE = Pattern.compile("endFrames\\[\\d+](\\..*)");

  private SharedDefaults() {}

  static List<DefaultTaken> of(List<DefaultTaken> taken, int endFrames) {
    return taken.stream().map(one -> shared(one, taken, endFrames)).distinct().toList();
  }

  private static DefaultTaken shared(DefaultTaken one, List<DefaultTaken> taken, int endFrames) {
    Matcher shape = OF_ONE.matcher(one.key());
    if (!shape.matches()) {
      return one;
    }
    String rest = shape.group(1);
    for (int i = 0; i < endFrames; i++) {
      if (!taken.contains(
          new DefaultTaken("endFrames[" + i + "]" + rest, one.value(), one.reason()))) {
        return one;
      }
    }
    return new DefaultTaken("endFrames" + rest, one.value(), one.reason());
  }
}
