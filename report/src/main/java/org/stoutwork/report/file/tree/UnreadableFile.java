package org.stoutwork.report.file.tree;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A file could not be read. Carries every mistake found in it, in file order; the message is one
 * line for each (more where the text of the file is quoted).
 */
public final class UnreadableFile extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;
  private final int more;

  /**
   * Builds the exception.
   *
   * @param faults the mistakes to show, at least one
   * @param count how many there are in all, at least as many as shown
   */
  public UnreadableFile(List<Fault> faults, int count) {
    super(message(faults, count));
    this.faults = List.copyOf(faults);
    this.more = count - faults.size();
  }

  /** The mistakes in file order. */
  public List<Fault> faults() {
    return faults;
  }

  /** What is said of mistakes beyond those that are kept; empty where all are kept. */
  public String rest() {
    return rest(more);
  }

  private static String rest(int more) {
    return more <= 0 ? "" : "and " + more + " more mistakes of this sort";
  }

  private static String message(List<Fault> faults, int count) {
    String lines = faults.stream().map(Fault::toString).collect(Collectors.joining("\n"));
    String rest = rest(count - faults.size());
    return rest.isEmpty() ? lines : lines + "\n" + rest;
  }
}
