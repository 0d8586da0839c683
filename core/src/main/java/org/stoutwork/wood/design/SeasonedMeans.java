package org.stoutwork.wood.design;

import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.grade.GrowthDefects;
import org.stoutwork.working.Pad;

/**
 * Means of a piece at its moisture content: those of clear wood for a clear piece; for a piece with
 * knots no more than ASTM D245 lets it gain by drying over the green value.
 */
final class SeasonedMeans {

  /** Above every intersection moisture content. */
  private static final double GREEN = 60;

  private final Species species;
  private final DesignConditions conditions;
  private final DesignTables tables;

  SeasonedMeans(Species species, DesignConditions conditions, DesignTables tables) {
    this.species = species;
    this.conditions = conditions;
    this.tables = tables;
  }

  OptionalDouble of(ClearProperty what, Pad pad) {
    double moisture = conditions.moisture();
    OptionalDouble clear = tables.means().mean(species, what, moisture, pad);
    Optional<Property> most = tables.seasoning().most(what, moisture);
    boolean whole = conditions.growth().defects() == GrowthDefects.CLEAR;
    if (clear.isEmpty() || most.isEmpty() || whole) {
      return clear;
    }
    double s =
        pad.given(
            "s",
            "most gain by drying with knots",
            most.get().value(),
            Unit.ONE,
            most.get().source());
    return OptionalDouble.of(
        pad.take(AllowableFormulas.SEASONED, clear.getAsDouble(), s, green(what, pad)));
  }

  private double green(ClearProperty what, Pad pad) {
    double value = tables.means().mean(species, what, GREEN, Pad.blank()).orElseThrow();
    Source source =
        species
            .clear()
            .green(what)
            .map(Property::source)
            .orElse(
                Source.projectDefault("no green value is printed: worked out from the dry one"));
    return pad.given("P_g", "mean, green: " + what.meaning(), value, Unit.MPA, source);
  }
}
