package org.stoutwork.report.sheet.bench;

import java.util.Objects;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.units.UnitSystem;

/**
 * How a sheet is to be made.
 *
 * @param paper on which it will be printed
 * @param units of tables and drawings; workings are always in SI units
 * @param version of the program, such as {@code 0.1.0}; never blank
 */
public record SheetOptions(Paper paper, UnitSystem units, String version) {

  /**
   * @throws IllegalArgumentException if the version is blank
   */
  public SheetOptions {
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(units, "units");
    if (version.isBlank()) {
      throw new IllegalArgumentException(
          "a sheet says by which version of the program it was made; the version was blank");
    }
  }

  /** A sheet in SI units on A4. */
  public static SheetOptions usual(String version) {
    return new SheetOptions(Paper.A4, UnitSystem.SI, version);
  }
}
