package org.stoutwork.report.command;

import java.io.PrintStream;

/**
 * Where a command writes. Data go to {@code out} when asked for; words for people go there too, or
 * to {@code err} when data have {@code out} to themselves.
 *
 * @param out standard output
 * @param err standard error
 */
public record Console(PrintStream out, PrintStream err) {

  /**
   * The stream for people.
   *
   * @param dataOnOut whether standard output carries data
   * @return the other stream then
   */
  public PrintStream people(boolean dataOnOut) {
    return dataOnOut ? err : out;
  }
}
