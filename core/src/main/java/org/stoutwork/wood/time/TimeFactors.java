package org.stoutwork.wood.time;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Wood;

/**
 * The factors for time, service class and safety, as their tables give them. An empty answer means
 * that the product is not to be used there. Immutable.
 */
public final class TimeFactors {

  private final Table mod;
  private final Table def;
  private final Table gamma;
  private final Table american;

  private TimeFactors() {
    mod = Table.beside(Wood.class, "k-mod.csv");
    def = Table.beside(Wood.class, "k-def.csv");
    gamma = Table.beside(Wood.class, "gamma-m.csv");
    american = Table.beside(Wood.class, "load-duration-us.csv");
  }

  /** Reads the tables. */
  public static TimeFactors load() {
    return new TimeFactors();
  }

  /**
   * The factor k_mod (EN 1995-1-1 Table 3.1).
   *
   * @param product the timber product
   * @param grade of the product's standard; empty for products that are not graded
   * @param service where it stands
   * @param duration of the load
   */
  public Optional<Property> kMod(
      Product product, String grade, ServiceClass service, DurationClass duration) {
    return mod.rows().stream()
        .filter(row -> isOf(row, product, grade))
        .filter(row -> row.requiredNumber("service_class") == service.number())
        .findFirst()
        .flatMap(row -> factor(row, duration.column()));
  }

  /** Where a product may be used under a load of some duration, each as part of a sentence. */
  public List<String> placesOf(Product product, DurationClass duration) {
    return mod.rows().stream()
        .filter(row -> row.required("product").equals(product.words()))
        .filter(row -> row.number(duration.column()).isPresent())
        .map(row -> place(product, row))
        .toList();
  }

  private static String place(Product product, Row row) {
    List<String> grades = row.list("grades");
    String what = grades.isEmpty() ? product.words() : String.join(" or ", grades);
    return "%s in service class %s".formatted(what, row.required("service_class"));
  }

  /** The deformation factor k_def (EN 1995-1-1 Table 3.2). */
  public Optional<Property> kDef(Product product, String grade, ServiceClass service) {
    return def.rows().stream()
        .filter(row -> isOf(row, product, grade))
        .findFirst()
        .flatMap(row -> factor(row, "service_class_" + service.number()));
  }

  /** The partial factor γ_M of a product in a fundamental combination (EN 1995-1-1 Table 2.3). */
  public Optional<Property> gammaM(Product product) {
    return gamma(product.words(), "fundamental");
  }

  /** The partial factor γ_M of connections in a fundamental combination. */
  public Property gammaMConnections() {
    return gamma("connections", "fundamental").orElseThrow();
  }

  /** The partial factor γ_M of everything in an accidental combination. */
  public Property gammaMAccidental() {
    return gamma("all", "accidental").orElseThrow();
  }

  private Optional<Property> gamma(String product, String situation) {
    return gamma.rows().stream()
        .filter(row -> row.required("product").equals(product))
        .filter(row -> row.required("situation").equals(situation))
        .findFirst()
        .flatMap(row -> factor(row, "gamma_M"));
  }

  /** The load duration factor C_D (NDS Table 2.3.2). */
  public Property cD(UsDuration duration) {
    return american.rows().stream()
        .filter(row -> row.required("key").equals(duration.words()))
        .findFirst()
        .flatMap(row -> factor(row, "C_D"))
        .orElseThrow();
  }

  private static boolean isOf(Row row, Product product, String grade) {
    List<String> grades = row.list("grades");
    return row.required("product").equals(product.words())
        && (grades.isEmpty() || grades.contains(grade));
  }

  private static Optional<Property> factor(Row row, String column) {
    OptionalDouble printed = row.number(column);
    return printed.isPresent()
        ? Optional.of(new Property(printed.getAsDouble(), Unit.ONE, row.source()))
        : Optional.empty();
  }
}
