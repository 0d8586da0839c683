package org.stoutwork.joint.advice;

import org.stoutwork.quantity.Writing;

/**
 * A joint held against one piece of advice.
 *
 * @param advice the row
 * @param value of the joint, in the row's unit
 */
public record Note(Advice advice, double value) {

  /** Whether the joint follows the advice. */
  public boolean followed() {
    return advice.follows(value);
  }

  /** The nearest value that follows the advice, in the row's unit. */
  double nearest() {
    return value < advice.least() ? advice.least() : advice.most();
  }

  /** The note as a maker reads it. */
  public String text() {
    return "%s: %s (%s); this joint has %s"
        .formatted(
            advice.part(),
            advice.words(),
            advice.source().mark().words(),
            Writing.with(value, advice.unit(), 3)
                + (advice.of().isEmpty() ? "" : " " + advice.of()));
  }
}
