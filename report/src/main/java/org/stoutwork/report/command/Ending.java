package org.stoutwork.report.command;

/** Ends a command with a message for a person and an exit code. */
public final class Ending extends Exception {

  private static final long serialVersionUID = 1L;

  private final int exitCode;

  /**
   * Builds the exception.
   *
   * @param exitCode one of {@link ExitCode}
   * @param message what a person needs to know, with the repair
   */
  public Ending(int exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  /** One of {@link ExitCode}. */
  public int exitCode() {
    return exitCode;
  }
}
