package org.stoutwork.wood;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sheet or an engineered timber in a range of thickness.
 *
 * @param key short name, such as {@code plywood-birch-18}
 * @param name for people
 * @param product what it is made as
 * @param grade of the product's standard; may be empty
 * @param over thickness above which the values hold, mm; empty if the source gives no range
 * @param upTo thickness up to which they hold, mm; equal to {@code over} for a nominal thickness
 * @param basis what its strengths are
 * @param values what the source gives; may lack any property
 */
public record SheetGood(
    String key,
    String name,
    Product product,
    String grade,
    OptionalDouble over,
    OptionalDouble upTo,
    Basis basis,
    Map<SheetProperty, Property> values)
    implements Wood {

  /** What the strengths of a sheet are. Moduli are means in either case. */
  public enum Basis {
    /** Strengths are 5 % fractiles, as partial factors want them. */
    CHARACTERISTIC,
    /** Strengths are mean ultimate values of tests. */
    MEAN
  }

  /** Keeps its own copy of the values. */
  public SheetGood {
    Map<SheetProperty, Property> copy = new EnumMap<>(SheetProperty.class);
    copy.putAll(values);
    values = Collections.unmodifiableMap(copy);
  }

  /** One property, if the source gives it. */
  public Optional<Property> value(SheetProperty what) {
    return Optional.ofNullable(values.get(what));
  }

  /** Whether the values hold for a sheet of the given thickness in mm. */
  public boolean covers(double thickness) {
    if (over.isEmpty() || upTo.isEmpty()) {
      return true;
    }
    return over.getAsDouble() == upTo.getAsDouble()
        ? Math.abs(thickness - upTo.getAsDouble()) <= 0.5
        : thickness > over.getAsDouble() && thickness <= upTo.getAsDouble();
  }

  @Override
  public List<String> names() {
    return List.of(name);
  }

  @Override
  public String kind() {
    return "sheet, " + product.words();
  }
}
