package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.DefaultTaken;

class SharedDefaultsTest {

  private static DefaultTaken taken(String key, String value) {
    return new DefaultTaken(key, value, "usual");
  }

  @Test
  void what_all_frames_took_alike_is_said_once_and_the_rest_by_frame() {
    List<DefaultTaken> all =
        List.of(
            taken("top.width", "610 mm"),
            taken("endFrames[0].legs.along", "85 mm"),
            taken("endFrames[0].topRail.depth", "104 mm"),
            taken("endFrames[0].foot.depth", "62 mm"),
            taken("endFrames[1].legs.along", "85 mm"),
            taken("endFrames[1].topRail.depth", "98 mm"));
    assertEquals(
        List.of(
            taken("top.width", "610 mm"),
            taken("endFrames.legs.along", "85 mm"),
            taken("endFrames[0].topRail.depth", "104 mm"),
            taken("endFrames[0].foot.depth", "62 mm"),
            taken("endFrames[1].topRail.depth", "98 mm")),
        SharedDefaults.of(all, 2));
  }
}
