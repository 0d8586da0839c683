package org.stoutwork.action;

import org.stoutwork.bench.BasisChoice;
import org.stoutwork.source.Source;

/**
 * With what factors actions stand together. The permanent part is the weight of bench, vises and
 * machines; the stored part lies on it for months; one other action leads.
 *
 * @param words for the sheet
 * @param permanent factor
 * @param stored factor
 * @param leading factor
 * @param source of the factors
 */
public record Factors(
    String words, double permanent, double stored, double leading, Source source) {

  private static final Source EUROPEAN =
      Source.fromMemory("EN 1990", "6.4.3.2, eq. 6.10, Annex A1; ψ_0 = 0.9 for stored goods");
  private static final Source AMERICAN =
      Source.fromMemory("ASCE/SEI 7", "allowable stress combinations");

  /** For strength under a leading action. */
  public static Factors strength(BasisChoice basis) {
    return basis == BasisChoice.PARTIAL_FACTORS
        ? new Factors("1.35 permanent + 1.5 leading + 1.35 stored", 1.35, 1.35, 1.5, EUROPEAN)
        : new Factors("permanent + leading + stored", 1, 1, 1, AMERICAN);
  }

  /** For strength under the weight of the bench alone. */
  public static Factors alone(BasisChoice basis) {
    return basis == BasisChoice.PARTIAL_FACTORS
        ? new Factors("1.35 permanent", 1.35, 0, 0, EUROPEAN)
        : new Factors("permanent", 1, 0, 0, AMERICAN);
  }

  /** For strength under what is stored. */
  public static Factors withStored(BasisChoice basis) {
    return basis == BasisChoice.PARTIAL_FACTORS
        ? new Factors("1.35 permanent + 1.5 stored", 1.35, 1.5, 0, EUROPEAN)
        : new Factors("permanent + stored", 1, 1, 0, AMERICAN);
  }

  /** A thrust and what holds the bench down for certain: its own weight, without what is stored. */
  public static Factors thrust() {
    return new Factors(
        "permanent + leading, each as it is",
        1,
        0,
        1,
        Source.projectDefault("what is stored may be gone when somebody pushes"));
  }

  /** For use: everything as it is. */
  public static Factors use() {
    return new Factors(
        "permanent + stored + leading, each as it is",
        1,
        1,
        1,
        Source.fromMemory("EN 1990", "6.5.3, characteristic combination"));
  }
}
