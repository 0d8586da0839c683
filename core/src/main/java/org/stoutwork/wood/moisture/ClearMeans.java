package org.stoutwork.wood.moisture;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ClearWood;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.working.Pad;

/**
 * Mean strength and stiffness of clear wood at a moisture content.
 *
 * <p>Between green and air-dry by the handbook's logarithmic law, from {@link #DRIEST} up to the
 * intersection moisture content; beyond either end the value at that end is kept. Where the table
 * prints only the air-dry value, it is lowered above 12 % by the handbook's mean change and not
 * raised below. Where it prints none, it is estimated from specific gravity, with a fifth taken
 * off. Immutable.
 */
public final class ClearMeans {

  /** Moisture content below which no further gain in strength is counted, %. */
  public static final double DRIEST = 8;

  private static final String ONLY_DRY =
      "No green value is printed: no gain is counted below the moisture of the test";

  private final Map<ClearProperty, Property> changes = new EnumMap<>(ClearProperty.class);
  private final Table relations;

  private ClearMeans() {
    for (Row row : Table.beside(Wood.class, "moisture-change.csv").rows()) {
      ClearProperty what = ClearProperty.ofRow(row.required("property")).orElseThrow();
      double change = row.requiredNumber("change_at_20_pct") / 100;
      changes.put(what, new Property(change, Unit.ONE, row.source()));
    }
    relations = Table.beside(Wood.class, "density-relations.csv");
  }

  /** Reads the tables. */
  public static ClearMeans load() {
    return new ClearMeans();
  }

  /**
   * The mean of a strength or of the bending modulus, in MPa; empty if neither the table nor the
   * specific gravity says anything.
   *
   * @param species whose mean is asked
   * @param what a strength or the modulus
   * @param moisture content, %, above 0
   * @param pad to write on
   * @throws IllegalArgumentException if the property does not follow moisture in a known way, such
   *     as impact bending, or the moisture content is not above 0
   */
  public OptionalDouble mean(Species species, ClearProperty what, double moisture, Pad pad) {
    requireKnownLaw(what);
    if (!(moisture > 0)) {
      throw new IllegalArgumentException(
          "moisture content must be above 0 %%; it was %s".formatted(moisture));
    }
    Optional<Property> green = species.clear().green(what);
    Optional<Property> dry = species.clear().dry(what);
    if (dry.isPresent() && green.isPresent()) {
      return OptionalDouble.of(between(species, what, moisture, pad));
    }
    if (dry.isPresent()) {
      double at12 = given(pad, what, "d", "mean, air-dry", dry.get());
      return OptionalDouble.of(fromDry(species, what, at12, moisture, pad));
    }
    if (green.isPresent()) {
      pad.remark("Only a green value is printed; it is taken at every moisture content.");
      return OptionalDouble.of(given(pad, what, "g", "mean, green", green.get()));
    }
    return estimate(species, what, moisture, pad);
  }

  private void requireKnownLaw(ClearProperty what) {
    if (!changes.containsKey(what)) {
      throw new IllegalArgumentException(
          "%s does not follow moisture content in a known way".formatted(what.meaning()));
    }
  }

  private double between(Species species, ClearProperty what, double moisture, Pad pad) {
    double dry = given(pad, what, "d", "mean, air-dry", species.clear().dry(what).orElseThrow());
    double green = given(pad, what, "g", "mean, green", species.clear().green(what).orElseThrow());
    boolean rises = green < dry && what != ClearProperty.TENSION_PERPENDICULAR;
    if (!rises) {
      pad.remark("The value does not rise with drying; the smaller of green and dry is taken.");
      return Math.min(green, dry);
    }
    double tested = species.clear().dryMoisture();
    double ends = species.intersection().value();
    double held = Math.max(DRIEST, Math.min(ends, moisture));
    if (held == tested) {
      return dry;
    }
    noteLimit(moisture, held, pad);
    pad.given("M_p", "intersection moisture", ends, Unit.POINT, species.intersection().source());
    return pad.take(MoistureLaw.LOGARITHMIC, dry, green, tested, held, ends);
  }

  private double fromDry(
      Species species, ClearProperty what, double dry, double moisture, Pad pad) {
    double tested = species.clear().dryMoisture();
    if (moisture <= tested) {
      if (moisture < tested) {
        pad.remark(ONLY_DRY);
      }
      return dry;
    }
    double held = Math.min(species.intersection().value(), moisture);
    noteLimit(moisture, held, pad);
    Property change = changes.get(what);
    double c =
        pad.given("c", "change from 12 to 20 % MC", change.value(), Unit.ONE, change.source());
    return pad.take(MoistureLaw.FROM_DRY, dry, c, tested, held);
  }

  private OptionalDouble estimate(Species species, ClearProperty what, double moisture, Pad pad) {
    OptionalDouble gravity = WoodDensity.specificGravity(species, ClearWood.AIR_DRY, pad);
    if (gravity.isEmpty()) {
      return OptionalDouble.empty();
    }
    Row row = relation(what, species.group());
    Source source = row.source();
    double scale = what.scale();
    double a =
        pad.given("a", "factor of the relation", row.requiredNumber("a") * scale, Unit.MPA, source);
    double b =
        pad.given("b", "exponent of the relation", row.requiredNumber("b"), Unit.ONE, source);
    pad.remark("No value is printed for this species: estimated from its specific gravity.");
    double dry = pad.take(MoistureLaw.ESTIMATE, a, gravity.getAsDouble(), b);
    return OptionalDouble.of(fromDry(species, what, dry, moisture, pad));
  }

  private Row relation(ClearProperty what, WoodGroup group) {
    return relations.rows().stream()
        .filter(row -> row.required("property").equals(what.row()))
        .filter(row -> row.required("group").equals(group.words()))
        .findFirst()
        .orElseThrow();
  }

  private static double given(
      Pad pad, ClearProperty what, String index, String state, Property property) {
    return pad.given(
        "P_" + index,
        "%s: %s".formatted(state, what.meaning()),
        property.value(),
        Unit.MPA,
        property.source());
  }

  private static void noteLimit(double asked, double held, Pad pad) {
    if (asked != held && pad.keepsLines()) {
      pad.remark(
          "Moisture content %s %% is beyond the law; the value at %s %% is taken."
              .formatted(asked, held));
    }
  }
}
