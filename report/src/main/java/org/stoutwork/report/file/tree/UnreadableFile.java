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

  /**
   * Builds the exception.
   *
   * @param faults the mistakes to show, at least one
   * @param count how many there are in all, at least as many as shown
   */
  public UnreadableFile(List<Fault> faults, int count) {
    super(message(faults, count));
    this.faults = List.copyOf(faults);
  }

  /** The mistakes in file order. */
  public List<Fault> faults() {
    return faults;
  }

  private static String message(List<Fault> faults, int count) {
    String lines = faults.stream().map(Fault::toString).collect(Collectors.joining("\n"));
    int more = count - faults.size();
    return more <= 0 ? lines : lines + "\nand " + more + " more mistakes of this sort";
  }
}
