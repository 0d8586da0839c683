package org.stoutwork.fastener.lateral;

import java.util.Comparator;
import java.util.List;

/**
 * The forces of all yield modes of one fastener.
 *
 * @param modes in the order of the standard
 */
public record YieldModes(List<Mode> modes) {

  /**
   * One yield mode.
   *
   * @param name as the standard letters it
   * @param force N
   */
  public record Mode(String name, double force) {}

  /** Keeps its own copy. */
  public YieldModes {
    modes = List.copyOf(modes);
    if (modes.isEmpty()) {
      throw new IllegalArgumentException("a fastener has at least one yield mode");
    }
  }

  /** The mode that yields first; the earlier one if two are equal. */
  public Mode least() {
    return modes.stream().min(Comparator.comparingDouble(Mode::force)).orElseThrow();
  }

  /**
   * The force of a mode.
   *
   * @throws IllegalArgumentException if there is no such mode
   */
  public double of(String name) {
    return modes.stream()
        .filter(mode -> mode.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no yield mode \"" + name + "\""))
        .force();
  }
}
