package org.stoutwork.wood.scatter;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Wood;
import org.stoutwork.working.Formula;

/**
 * Scatter of the properties of clear wood within a species, the same for all species. Immutable.
 */
public final class Variability {

  /** Standard deviations between the mean and the value that 95 % of a normal population exceed. */
  public static final double Z_5 = 1.645;

  /** The value that all but 5 % exceed, of a normal population. */
  public static final Formula EXCLUSION_5 =
      Formula.define("X_{05}")
          .meaning("5 % exclusion value")
          .unit(Unit.MPA)
          .where("X", "mean", Unit.MPA)
          .where("v", "coefficient of variation", Unit.ONE)
          .as("X*(1 - 1.645*v)")
          .source(Source.fromMemory("ASTM D2555", "5 % exclusion limit of a normal population"));

  private final Map<ClearProperty, Property> coefficients;
  private final Table correlations;

  private Variability() {
    Map<ClearProperty, Property> read = new EnumMap<>(ClearProperty.class);
    for (Row row : Table.beside(Wood.class, "variability.csv").rows()) {
      ClearProperty.ofRow(row.required("property"))
          .ifPresent(what -> read.put(what, fraction(row)));
    }
    coefficients = Collections.unmodifiableMap(read);
    correlations = Table.beside(Wood.class, "scatter.csv");
  }

  /** Reads the tables. */
  public static Variability load() {
    return new Variability();
  }

  private static Property fraction(Row row) {
    return new Property(row.requiredNumber("cov_pct") / 100, Unit.ONE, row.source());
  }

  /** The coefficient of variation of a property, as a fraction. */
  public Property coefficient(ClearProperty what) {
    return Optional.ofNullable(coefficients.get(what))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no coefficient of variation is tabulated for " + what.meaning()));
  }

  /** Bending modulus and bending strength of clear wood with given means, in MPa. */
  public JointScatter clearWood(double meanModulus, double meanStrength) {
    return new JointScatter(
        Lognormal.of(meanModulus, coefficient(ClearProperty.MODULUS).value()),
        Lognormal.of(meanStrength, coefficient(ClearProperty.BENDING).value()),
        named("correlation_modulus_bending").value());
  }

  /** Bending modulus and bending strength of graded timber with given means, in MPa. */
  public JointScatter gradedTimber(double meanModulus, double meanStrength) {
    return new JointScatter(
        Lognormal.of(meanModulus, named("cov_modulus").value()),
        Lognormal.of(meanStrength, named("cov_bending").value()),
        named("correlation_modulus_bending").value());
  }

  /**
   * A number of the scatter table by its key, such as {@code cov_density}.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Property named(String key) {
    return correlations.rows().stream()
        .filter(row -> row.required("key").equals(key))
        .findFirst()
        .map(row -> new Property(row.requiredNumber("value"), Unit.ONE, row.source()))
        .orElseThrow(() -> new IllegalArgumentException("no scatter value \"%s\"".formatted(key)));
  }
}
