package org.stoutwork.wood;

import java.util.Locale;

/** Broadleaved or coniferous; the words of the trade, which say nothing about hardness. */
public enum WoodGroup {
  HARDWOOD,
  SOFTWOOD;

  /** The group as it is written in tables and on sheets. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The group written so.
   *
   * @throws IllegalArgumentException if it is neither
   */
  public static WoodGroup named(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT));
  }
}
