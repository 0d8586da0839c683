package org.stoutwork.wood;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * A strength class of graded structural timber, such as C24 or D40.
 *
 * <p>The shear strength is that of EN 338:2016, which goes with the crack factor {@link
 * #CRACK_FACTOR} on the width of a member. The lower shear strengths of earlier editions go with
 * the full width; the two are never mixed here.
 *
 * @param key such as {@code C24}
 * @param group softwood for C, hardwood for D
 * @param values every property of the class
 */
public record StrengthClass(String key, WoodGroup group, Map<ClassProperty, Property> values)
    implements Wood {

  /** Part of the width that carries shear, k_cr, for solid timber of EN 338:2016. */
  public static final Property CRACK_FACTOR =
      new Property(
          0.67,
          Unit.ONE,
          Source.published(
              "EN 1995-1-1:2004+A1:2008", "6.1.7(2), recommended value for solid timber"));

  /**
   * Keeps its own copy of the values.
   *
   * @throws IllegalArgumentException if a property is missing
   */
  public StrengthClass {
    Map<ClassProperty, Property> copy = new EnumMap<>(ClassProperty.class);
    copy.putAll(values);
    for (ClassProperty what : ClassProperty.values()) {
      if (!copy.containsKey(what)) {
        throw new IllegalArgumentException(
            "strength class %s lacks its %s".formatted(key, what.meaning()));
      }
    }
    values = Collections.unmodifiableMap(copy);
  }

  /** One property of the class; every class has all of them. */
  public Property value(ClassProperty what) {
    return values.get(what);
  }

  @Override
  public String name() {
    return key;
  }

  @Override
  public List<String> names() {
    return List.of(key, key.substring(0, 1) + " " + key.substring(1));
  }

  @Override
  public Product product() {
    return Product.SOLID_TIMBER;
  }

  @Override
  public String kind() {
    return "strength class, " + group.words();
  }
}
