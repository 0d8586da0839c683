package org.stoutwork.report.command;

import java.util.Arrays;
import java.util.Map;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The units in which the summary and the sheet show their figures. */
enum UnitSystem {
  /** Millimetres, newtons, kilograms. */
  SI("si", Map.of()),
  /** Inches, pounds. */
  INCH_POUND(
      "inch-pound",
      Map.of(
          Unit.MM, Unit.IN,
          Unit.N, Unit.LBF,
          Unit.N_MM, Unit.LBF_IN,
          Unit.MPA, Unit.PSI,
          Unit.KG, Unit.LB,
          Unit.N_PER_MM, Unit.LBF_PER_IN));

  private final String words;
  private final Map<Unit, Unit> shown;

  UnitSystem(String words, Map<Unit, Unit> shown) {
    this.words = words;
    this.shown = shown;
  }

  /** As it is written on the command line. */
  @Override
  public String toString() {
    return words;
  }

  /** Reads the word of the command line. */
  static final class Converter implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String word) {
      return Arrays.stream(values())
          .filter(system -> system.words.equals(word))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("'" + word + "' is not si or inch-pound"));
    }
  }

  /** A value with its unit. */
  String text(double value, Unit unit) {
    Unit in = shown.getOrDefault(unit, unit);
    return Writing.with(unit.convert(value, in), in, Writing.USUAL_DIGITS);
  }
}
