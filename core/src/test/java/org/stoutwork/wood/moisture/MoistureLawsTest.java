package org.stoutwork.wood.moisture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Unit;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.WoodTables;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

@Domain(DomainContext.Global.class)
@Domain(WoodTables.class)
class MoistureLawsTest {

  private static final Pad BLANK = Pad.blank();
  private final ClearMeans means = ClearMeans.load();
  private final WoodCatalogue woods = WoodCatalogue.load();

  @Property
  void strength_and_stiffness_never_rise_with_moisture(
      @ForAll Species species,
      @ForAll ClearProperty what,
      @ForAll @DoubleRange(min = 1, max = 40) double moisture,
      @ForAll @DoubleRange(min = 0, max = 10) double more) {
    OptionalDouble drier = means.mean(species, what, moisture, BLANK);
    OptionalDouble damper = means.mean(species, what, moisture + more, BLANK);
    assertEquals(drier.isPresent(), damper.isPresent());
    assertTrue(damper.orElse(0) <= drier.orElse(0) * (1 + 1e-12), species.key() + " " + what);
  }

  @Property
  void the_law_passes_through_the_printed_values(
      @ForAll Species species, @ForAll ClearProperty what) {
    var dry = species.clear().dry(what);
    var green = species.clear().green(what);
    boolean lawful =
        dry.isPresent()
            && green.isPresent()
            && green.get().value() < dry.get().value()
            && what != ClearProperty.TENSION_PERPENDICULAR;
    if (lawful) {
      double tested = species.clear().dryMoisture();
      double ends = species.intersection().value();
      assertEquals(dry.get().value(), mean(species, what, tested), 1e-9);
      assertEquals(green.get().value(), mean(species, what, ends), 1e-9);
      assertEquals(green.get().value(), mean(species, what, ends + 9), 1e-9);
    }
  }

  private double mean(Species species, ClearProperty what, double moisture) {
    return means.mean(species, what, moisture, BLANK).orElseThrow();
  }

  @Property
  void an_estimate_grows_with_specific_gravity(
      @ForAll WoodGroup group,
      @ForAll ClearProperty what,
      @ForAll @DoubleRange(min = 0.2, max = 0.9) double light,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double more) {
    Species blank = woods.blankSpecies("own", "Own", group);
    assertTrue(estimate(blank, light, what) < estimate(blank, light + more, what));
  }

  private double estimate(Species blank, double gravity, ClearProperty what) {
    return mean(
        blank.withDry(
            ClearProperty.SPECIFIC_GRAVITY,
            org.stoutwork.wood.Property.yours(gravity, Unit.ONE, "a scale")),
        what,
        12);
  }

  /** In the densest woods swelling outweighs the water, so the law ends at a gravity of 0.8. */
  @Property
  void density_rises_with_moisture(
      @ForAll Species species,
      @ForAll @DoubleRange(min = 0, max = 29) double moisture,
      @ForAll @DoubleRange(min = 0.1, max = 1) double more) {
    OptionalDouble drier = WoodDensity.mean(species, moisture, BLANK);
    OptionalDouble damper = WoodDensity.mean(species, moisture + more, BLANK);
    boolean dense = WoodDensity.mean(species, 30, BLANK).orElse(0) > 1300 * 0.8;
    assertTrue(dense || damper.orElse(1) > drier.orElse(0), species.key());
  }

  @Property
  void moisture_rises_with_humidity_and_falls_with_warmth(
      @ForAll @DoubleRange(min = 0.02, max = 0.97) double humidity,
      @ForAll @DoubleRange(min = 0.01, max = 0.02) double more,
      @ForAll @DoubleRange(min = 5, max = 60) double celsius) {
    double emc = EquilibriumMoisture.percent(humidity, celsius, BLANK);
    assertTrue(EquilibriumMoisture.percent(humidity + more, celsius, BLANK) > emc);
    assertTrue(EquilibriumMoisture.percent(humidity, celsius + 5, BLANK) < emc + 0.05);
    assertTrue(emc > 0 && emc < 30);
  }

  @Property
  void wood_moves_more_along_the_rings_and_back_again(
      @ForAll Species species,
      @ForAll @DoubleRange(min = 0.1, max = 29) double from,
      @ForAll @DoubleRange(min = 0.1, max = 29) double to) {
    double width = 317;
    SizeChange unknown =
        Movement.across(species.shrinkage(), RingDirection.UNKNOWN, width, from, to, BLANK);
    SizeChange radial =
        Movement.across(species.shrinkage(), RingDirection.RADIAL, width, from, to, BLANK);
    SizeChange tangential =
        Movement.across(species.shrinkage(), RingDirection.TANGENTIAL, width, from, to, BLANK);
    assertEquals(radial.least(), unknown.least(), 1e-9);
    assertEquals(tangential.most(), unknown.most(), 1e-9);
    assertTrue(Math.signum(unknown.most()) == Math.signum(to - from));
    assertTrue(Math.abs(unknown.most()) < 0.15 * width);
  }

  @Test
  void the_working_of_an_adjusted_value_names_its_sources() {
    Species ash = (Species) woods.byKey("ash-white").orElseThrow();
    RecordingPad pad = Pad.recording();
    double value = means.mean(ash, ClearProperty.BENDING, 8, pad).orElseThrow();
    assertEquals(value, pad.working().result().orElseThrow());
    assertEquals(4, pad.working().lines().size());
    assertTrue(pad.working().lines().get(3).text().contains("eq. 5-3 (published)"));
  }

  @Test
  void beyond_the_law_a_remark_says_what_was_taken() {
    Species ash = (Species) woods.byKey("ash-white").orElseThrow();
    RecordingPad pad = Pad.recording();
    double value = means.mean(ash, ClearProperty.BENDING, 4, pad).orElseThrow();
    assertEquals(mean(ash, ClearProperty.BENDING, ClearMeans.DRIEST), value);
    assertTrue(
        pad.working().lines().stream()
            .anyMatch(
                line ->
                    line.text()
                        .equals(
                            "Moisture content 4.0 % is beyond the law; the value at 8.0 % is"
                                + " taken.")));
  }

  @Test
  void what_has_no_law_and_what_is_out_of_range_is_refused() {
    Species ash = (Species) woods.byKey("ash-white").orElseThrow();
    assertEquals(
        "drop height in impact bending does not follow moisture content in a known way",
        message(() -> means.mean(ash, ClearProperty.IMPACT, 12, BLANK)));
    assertEquals(
        "moisture content must be above 0 %; it was 0.0",
        message(() -> means.mean(ash, ClearProperty.BENDING, 0, BLANK)));
    assertEquals(
        "relative humidity is a fraction from 0 to 0.99; it was 55.0",
        message(() -> EquilibriumMoisture.percent(55, 20, BLANK)));
    assertEquals(
        "a moisture range runs upward within 0 to 30 %; it was 12.0 to 8.0",
        message(() -> new MoistureRange(12, 8)));
  }

  private static String message(Runnable faulty) {
    return assertThrows(IllegalArgumentException.class, faulty::run).getMessage();
  }

  @Test
  void the_presets_of_climate_give_rising_moisture_ranges() {
    assertEquals(6, Climate.presets().size());
    for (Climate climate : Climate.presets()) {
      MoistureRange range = climate.moisture(BLANK);
      assertTrue(range.spread() > 2 && range.spread() < 8, climate.key() + " " + range);
    }
  }
}
