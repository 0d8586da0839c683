package org.stoutwork.wood.moisture;

import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ClearWood;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Density of a species at a moisture content up to 30 %: ovendry mass and water over the volume at
 * that moisture.
 */
public final class WoodDensity {

  private static final Source CHAPTER_4 =
      Source.fromMemory("Wood Handbook FPL-GTR-190 (2010)", "chapter 4, specific gravity");

  private static final Formula BASIC =
      Formula.define("G_b")
          .meaning("basic specific gravity, on green volume")
          .where("G_d", "specific gravity of the air-dry test", Unit.ONE)
          .where("M_d", "moisture content of the air-dry test", Unit.POINT)
          .as("G_d/(1 + 0.265*(30 - M_d)/30*G_d)")
          .source(CHAPTER_4);

  private static final Formula AT_MOISTURE =
      Formula.define("G")
          .meaning("specific gravity at the moisture content")
          .where("G_b", "basic specific gravity", Unit.ONE)
          .where("M", "moisture content", Unit.POINT)
          .as("G_b/(1 - 0.265*(30 - M)/30*G_b)")
          .source(CHAPTER_4);

  private static final Formula DENSITY =
      Formula.define("ρ")
          .meaning("density at the moisture content")
          .unit(Unit.KG_PER_M3)
          .where("ρ_w", "density of water", Unit.KG_PER_M3)
          .where("G", "specific gravity at the moisture content", Unit.ONE)
          .where("M", "moisture content", Unit.POINT)
          .as("ρ_w*G*(1 + M/100)")
          .source(Source.derived("definition of specific gravity"));

  private static final double WATER = 1000;

  private WoodDensity() {}

  /**
   * The mean density in kg/m³; empty if no specific gravity is printed.
   *
   * @param species whose density is asked
   * @param moisture content, %, from 0 to 30
   * @param pad to write on
   * @throws IllegalArgumentException if the moisture content is outside 0 to 30 %
   */
  public static OptionalDouble mean(Species species, double moisture, Pad pad) {
    if (!(moisture >= 0 && moisture <= MoistureRange.SATURATION)) {
      throw new IllegalArgumentException(
          "the density is known from 0 to 30 %% moisture content; %s was asked"
              .formatted(moisture));
    }
    OptionalDouble gravity = specificGravity(species, moisture, pad);
    return gravity.isEmpty()
        ? gravity
        : OptionalDouble.of(pad.take(DENSITY, WATER, gravity.getAsDouble(), moisture));
  }

  /** The specific gravity on the volume at a moisture content, if any is printed. */
  static OptionalDouble specificGravity(Species species, double moisture, Pad pad) {
    ClearWood clear = species.clear();
    Optional<Property> dry = clear.dry(ClearProperty.SPECIFIC_GRAVITY);
    Optional<Property> green = clear.green(ClearProperty.SPECIFIC_GRAVITY);
    if (dry.isPresent()) {
      double tested = given(pad, "G_d", "specific gravity, air-dry", dry.get());
      if (moisture == clear.dryMoisture()) {
        return OptionalDouble.of(tested);
      }
      double basic = pad.take(BASIC, tested, clear.dryMoisture());
      return OptionalDouble.of(pad.take(AT_MOISTURE, basic, moisture));
    }
    return green.isPresent()
        ? OptionalDouble.of(
            pad.take(
                AT_MOISTURE, given(pad, "G_b", "specific gravity, green", green.get()), moisture))
        : OptionalDouble.empty();
  }

  private static double given(Pad pad, String symbol, String meaning, Property property) {
    return pad.given(symbol, meaning, property.value(), Unit.ONE, property.source());
  }
}
