package org.stoutwork.report.sheet;

import java.util.Arrays;
import java.util.List;
import org.stoutwork.report.drawing.RichText;

/**
 * A list without order.
 *
 * @param items one or more
 */
public record Bullets(List<RichText> items) implements Block {

  /**
   * @throws IllegalArgumentException if there is no item
   */
  public Bullets {
    items = List.copyOf(items);
    if (items.isEmpty()) {
      throw new IllegalArgumentException("a list needs at least one item; none was given");
    }
  }

  /** A list of marked-up items. */
  public static Bullets of(String... markups) {
    return new Bullets(Arrays.stream(markups).map(RichText::of).toList());
  }
}
