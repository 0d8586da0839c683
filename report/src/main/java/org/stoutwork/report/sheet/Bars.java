package org.stoutwork.report.sheet;

import java.util.List;
import org.stoutwork.report.drawing.RichText;

/**
 * Utilisation bars one below another, with one limit line at 1.0.
 *
 * @param bars one or more
 */
public record Bars(List<Bar> bars) implements Block {

  /**
   * @throws IllegalArgumentException if there is no bar
   */
  public Bars {
    bars = List.copyOf(bars);
    if (bars.isEmpty()) {
      throw new IllegalArgumentException("a row of bars needs at least one; none was given");
    }
  }

  /** The given bars. */
  public static Bars of(Bar... bars) {
    return new Bars(List.of(bars));
  }

  /**
   * One bar.
   *
   * @param label what was checked
   * @param utilisation the figure with its verdict
   */
  public record Bar(RichText label, Utilisation utilisation) {

    /** A bar with a marked-up label. */
    public static Bar of(String markup, Utilisation utilisation) {
      return new Bar(RichText.of(markup), utilisation);
    }
  }
}
