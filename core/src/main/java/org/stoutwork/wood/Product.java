package org.stoutwork.wood;

import java.util.Arrays;

/** What kind of timber product a wood is, as the factors for time and safety ask it. */
public enum Product {
  SOLID_TIMBER("solid timber"),
  GLULAM("glulam"),
  LVL("LVL"),
  PLYWOOD("plywood"),
  OSB("OSB"),
  PARTICLEBOARD("particleboard"),
  HARDBOARD("hardboard"),
  MEDIUM_BOARD("medium board"),
  MDF("MDF"),
  BLOCKBOARD("blockboard");

  private final String words;

  Product(String words) {
    this.words = words;
  }

  /** The product as it is written in tables and on sheets. */
  public String words() {
    return words;
  }

  /**
   * The product written so.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Product named(String words) {
    return Arrays.stream(values())
        .filter(product -> product.words.equals(words))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no timber product \"%s\"".formatted(words)));
  }
}
