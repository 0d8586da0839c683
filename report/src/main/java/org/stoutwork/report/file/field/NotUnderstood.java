package org.stoutwork.report.file.field;

/** A scalar's text is not what its key needs. */
public final class NotUnderstood extends Exception {

  private static final long serialVersionUID = 1L;

  private final String suggestion;

  /**
   * Builds the exception.
   *
   * @param reason why, as a clause that can stand in brackets; empty when nothing is to be added
   * @param suggestion a whole sentence that offers a repair, or empty
   */
  public NotUnderstood(String reason, String suggestion) {
    super(reason, null, false, false);
    this.suggestion = suggestion;
  }

  /** A whole sentence that offers a repair, or empty. */
  public String suggestion() {
    return suggestion;
  }
}
