package org.stoutwork.report.file.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers the mistakes of one reading. Belongs to that reading and to one thread; not shared.
 *
 * <p>At most {@link #MOST} are kept, so that a hostile file cannot fill the memory with complaints.
 */
public final class Faults {

  /** As many mistakes are kept; the rest is only counted. */
  public static final int MOST = 200;

  private final List<Fault> faults = new ArrayList<>();
  private final Set<Fault> seen = new HashSet<>();
  private int count;

  /**
   * Notes a mistake; the same mistake twice is noted once.
   *
   * @param fault the mistake
   */
  public void add(Fault fault) {
    if (faults.size() >= MOST) {
      count++;
    } else if (seen.add(fault)) {
      faults.add(fault);
      count++;
    }
  }

  /** How many mistakes were noted, kept or not. */
  public int count() {
    return count;
  }

  /** Whether there is none. */
  public boolean isEmpty() {
    return count == 0;
  }

  /** The mistakes kept, in file order. */
  public List<Fault> inFileOrder() {
    return faults.stream().sorted(Comparator.comparing(Fault::spot)).toList();
  }

  /**
   * Ends a reading.
   *
   * @throws UnreadableFile when a mistake was noted
   */
  public void throwIfAny() throws UnreadableFile {
    if (!isEmpty()) {
      throw new UnreadableFile(inFileOrder(), count);
    }
  }
}
