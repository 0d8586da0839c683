package org.stoutwork.report.command;

/** What the program says to the shell when it ends. */
public final class ExitCode {

  /** Everything is adequate, or was done as asked. */
  public static final int DONE = 0;

  /** Something is inadequate. */
  public static final int INADEQUATE = 1;

  /** The input or the arguments are wrong, or a file cannot be written. */
  public static final int BAD_INPUT = 2;

  /** The analysis was refused, or the program has a fault of its own. */
  public static final int REFUSED = 3;

  private ExitCode() {}
}
