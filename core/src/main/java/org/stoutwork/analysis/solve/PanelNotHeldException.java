package org.stoutwork.analysis.solve;

/** Thrown when a panel can move without resistance: nothing holds it, or it lifts and tips. */
public final class PanelNotHeldException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** With a message that says what moves and what would hold it. */
  PanelNotHeldException(String message) {
    super(message);
  }
}
