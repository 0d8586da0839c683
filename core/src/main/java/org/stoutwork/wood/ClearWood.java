package org.stoutwork.wood;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Mean properties of clear wood in two states: green, and air-dry.
 *
 * @param green above the fibre saturation point; may lack any property
 * @param dry near 12 % moisture content; may lack any property
 * @param dryMoisture moisture content at which the dry values were found, %, from 5 to 20
 */
public record ClearWood(
    Map<ClearProperty, Property> green, Map<ClearProperty, Property> dry, double dryMoisture) {

  /** The moisture content that the tables mean by air-dry. */
  public static final double AIR_DRY = 12;

  /**
   * Keeps its own copies.
   *
   * @throws IllegalArgumentException if the moisture content is outside 5 to 20 %, or a unit is not
   *     that of its property
   */
  public ClearWood {
    if (!(dryMoisture >= 5 && dryMoisture <= 20)) {
      throw new IllegalArgumentException(
          "air-dry values are from 5 to 20 %% moisture content; %s was given"
              .formatted(dryMoisture));
    }
    green = copy(green);
    dry = copy(dry);
  }

  private static Map<ClearProperty, Property> copy(Map<ClearProperty, Property> values) {
    Map<ClearProperty, Property> copy = new EnumMap<>(ClearProperty.class);
    values.forEach(
        (what, property) -> {
          if (property.unit() != what.unit()) {
            throw new IllegalArgumentException(
                "%s is given in %s; %s was given"
                    .formatted(what.meaning(), what.unit().symbol(), property.unit().symbol()));
          }
          copy.put(what, property);
        });
    return Collections.unmodifiableMap(copy);
  }

  /** The green value, if the source prints one. */
  public Optional<Property> green(ClearProperty what) {
    return Optional.ofNullable(green.get(what));
  }

  /** The air-dry value, if the source prints one. */
  public Optional<Property> dry(ClearProperty what) {
    return Optional.ofNullable(dry.get(what));
  }

  /** The same with one air-dry value replaced or added. */
  ClearWood withDry(ClearProperty what, Property value) {
    Map<ClearProperty, Property> changed = new EnumMap<>(ClearProperty.class);
    changed.putAll(dry);
    changed.put(what, value);
    return new ClearWood(green, changed, dryMoisture);
  }

  /** The same with one green value replaced or added. */
  ClearWood withGreen(ClearProperty what, Property value) {
    Map<ClearProperty, Property> changed = new EnumMap<>(ClearProperty.class);
    changed.putAll(green);
    changed.put(what, value);
    return new ClearWood(changed, dry, dryMoisture);
  }
}
