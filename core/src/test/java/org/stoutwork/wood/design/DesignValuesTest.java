package org.stoutwork.wood.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignConditions.Situation;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.grade.GrowthDefects;
import org.stoutwork.wood.time.CumulativeLoad;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.wood.time.ServiceClass;
import org.stoutwork.wood.time.UsDuration;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;

class DesignValuesTest {

  private final WoodCatalogue woods = WoodCatalogue.load();
  private final DesignTables tables = DesignTables.load();
  private final DesignConditions shortLoad =
      DesignConditions.indoors(
          DurationClass.SHORT, 12, Growth.straight(GrowthDefects.FEW_SMALL_KNOTS));

  private DesignValues values(String key, DesignBasis basis, DesignConditions conditions) {
    Wood wood = woods.byKey(key).orElseThrow();
    return DesignValues.of(wood, basis, conditions, tables);
  }

  private double partial(String key, DesignConditions conditions, DesignQuantity what) {
    return values(key, DesignBasis.PartialFactors.recommended(), conditions)
        .find(what, Pad.blank())
        .orElseThrow();
  }

  @Test
  void a_species_under_partial_factors_asks_for_a_class_and_suggests_some() {
    Found found =
        values("beech-european", DesignBasis.PartialFactors.recommended(), shortLoad)
            .find(DesignQuantity.BENDING, Pad.blank());
    assertEquals(
        "no bending strength along the grain (f_m) under partial factors: the species"
            + " beech-european has means and no characteristic values; name a strength class;"
            + " there is: D35 (Germany, LS10; EN 1912:2012 (from memory)); D40 (Germany, LS13;"
            + " EN 1912:2012 (from memory))",
        assertInstanceOf(Found.Missing.class, found).sentence());
    assertThrows(IllegalStateException.class, found::orElseThrow);
  }

  @Test
  void a_class_under_the_clear_wood_basis_asks_for_the_species() {
    Found found =
        values("C24", new DesignBasis.ClearWoodAllowable(), shortLoad)
            .find(DesignQuantity.SHEAR, Pad.blank());
    assertTrue(assertInstanceOf(Found.Missing.class, found).offers().contains("name the species"));
  }

  @Test
  void a_wood_without_any_value_says_so() {
    Wood blank = woods.blankSpecies("pear", "Pear", WoodGroup.HARDWOOD);
    Found found =
        DesignValues.of(blank, new DesignBasis.ClearWoodAllowable(), shortLoad, tables)
            .find(DesignQuantity.SHEAR, Pad.blank());
    assertEquals(
        "no shear strength along the grain (f_v) under clear-wood allowable: pear has neither a"
            + " printed value nor a specific gravity to estimate it from; there is: a value of"
            + " your own, with its source",
        assertInstanceOf(Found.Missing.class, found).sentence());
  }

  @Test
  void a_board_that_may_not_be_used_in_the_damp_has_no_strength_there() {
    DesignConditions shed =
        new DesignConditions(
            LoadDuration.of(DurationClass.LONG),
            ServiceClass.CLASS_2,
            14,
            Situation.USUAL,
            Growth.CLEAR);
    Found found =
        values("mdf-la-12-19", DesignBasis.PartialFactors.recommended(), shed)
            .find(DesignQuantity.BENDING, Pad.blank());
    assertTrue(
        assertInstanceOf(Found.Missing.class, found)
            .reason()
            .equals(
                "MDF MDF.LA has no k_mod in service class 2 under a load of long duration, so it"
                    + " is not to be used there"));
  }

  @Test
  void the_crack_factor_goes_with_the_class_and_only_with_it() {
    DesignBasis partial = DesignBasis.PartialFactors.recommended();
    assertEquals(0.67, values("C24", partial, shortLoad).crackFactor().value());
    assertEquals(1, values("plywood-birch-18", partial, shortLoad).crackFactor().value());
    assertEquals(
        1,
        values("oak-white", new DesignBasis.ClearWoodAllowable(), shortLoad).crackFactor().value());
    boolean said =
        values("C24", partial, shortLoad).explain(DesignQuantity.SHEAR).working().lines().stream()
            .map(Line::text)
            .anyMatch(text -> text.contains("k_cr = 0.67"));
    assertTrue(said);
  }

  @Test
  void every_wood_knows_its_factors_for_time_and_creep() {
    DesignBasis partial = DesignBasis.PartialFactors.recommended();
    assertEquals(0.9, values("oak-white", partial, shortLoad).kMod().orElseThrow().value());
    assertEquals(0.6, values("D40", partial, shortLoad).kDef().orElseThrow().value());
    assertEquals(1.5, values("osb-3-10-18", partial, shortLoad).kDef().orElseThrow().value());
    assertTrue(values("blockboard-18", partial, shortLoad).kDef().isEmpty());
  }

  @Test
  void an_accident_takes_the_partial_factor_one() {
    double usual = partial("D35", shortLoad, DesignQuantity.COMPRESSION_PARALLEL);
    double accident =
        partial("D35", shortLoad.in(Situation.ACCIDENTAL), DesignQuantity.COMPRESSION_PARALLEL);
    assertEquals(1.3, accident / usual, 1e-12);
  }

  @Test
  void a_partial_factor_of_the_users_own_takes_the_place_of_the_recommended_one() {
    Property annex = Property.yours(1.25, Unit.ONE, "national annex, table 2");
    Found found =
        values("C24", new DesignBasis.PartialFactors(Optional.of(annex)), shortLoad)
            .find(DesignQuantity.BENDING, Pad.blank());
    assertEquals(0.9 * 24 / 1.25, found.orElseThrow(), 1e-12);
    Property unmarked = new Property(1.25, Unit.ONE, Source.published("annex", "2"));
    assertThrows(
        IllegalArgumentException.class,
        () -> new DesignBasis.PartialFactors(Optional.of(unmarked)));
  }

  @Test
  void compression_across_the_grain_knows_neither_slope_nor_duration() {
    DesignBasis clear = new DesignBasis.ClearWoodAllowable();
    DesignConditions rough =
        new DesignConditions(
            LoadDuration.of(DurationClass.PERMANENT),
            ServiceClass.CLASS_1,
            12,
            Situation.USUAL,
            new Growth(GrowthDefects.FEW_SMALL_KNOTS, OptionalDouble.of(8)));
    for (DesignConditions c : new DesignConditions[] {shortLoad, rough}) {
      assertEquals(
          1.5 * 4.2 / 1.67,
          values("oak-northern-red", clear, c)
              .find(DesignQuantity.COMPRESSION_PERPENDICULAR, Pad.blank())
              .orElseThrow(),
          1e-12);
    }
  }

  @Test
  void drying_adds_less_to_a_piece_with_knots_than_to_a_clear_one() {
    DesignBasis clear = new DesignBasis.ClearWoodAllowable();
    DesignConditions clean = DesignConditions.indoors(DurationClass.SHORT, 9, Growth.CLEAR);
    DesignConditions knots =
        DesignConditions.indoors(
            DurationClass.SHORT, 9, Growth.straight(GrowthDefects.FEW_SMALL_KNOTS));
    double whole =
        values("beech-european", clear, clean)
            .find(DesignQuantity.BENDING, Pad.blank())
            .orElseThrow();
    double knotty =
        values("beech-european", clear, knots)
            .find(DesignQuantity.BENDING, Pad.blank())
            .orElseThrow();
    assertTrue(knotty < 0.65 * whole);
    assertTrue(
        values("beech-european", clear, knots)
            .explain(DesignQuantity.BENDING)
            .working()
            .lines()
            .stream()
            .anyMatch(line -> line.text().contains("with the gain by drying held back")));
  }

  @Test
  void of_knots_and_slope_of_grain_the_worse_one_counts() {
    Growth sloping = new Growth(GrowthDefects.FEW_SMALL_KNOTS, OptionalDouble.of(9));
    DesignConditions c = DesignConditions.indoors(DurationClass.SHORT, 12, sloping);
    DesignBasis clear = new DesignBasis.ClearWoodAllowable();
    double straight =
        values("ash-white", clear, shortLoad)
            .find(DesignQuantity.BENDING, Pad.blank())
            .orElseThrow();
    double steep =
        values("ash-white", clear, c).find(DesignQuantity.BENDING, Pad.blank()).orElseThrow();
    assertEquals(0.53 / 0.65, steep / straight, 1e-12);
  }

  @Test
  void grain_steeper_than_one_in_six_is_refused() {
    assertEquals(
        "the grain may slope 1:6 at the most; it was 1:5.0. Choose a straighter piece",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Growth(GrowthDefects.CLEAR, OptionalDouble.of(5)))
            .getMessage());
  }

  @Test
  void a_connection_may_not_count_on_the_impact_factor() {
    LoadDuration blow = LoadDuration.of(DurationClass.IMPACT);
    assertEquals(UsDuration.IMPACT, blow.american());
    assertEquals(UsDuration.TEN_MINUTES, blow.forConnection().american());
  }

  @Test
  void in_a_combination_the_shortest_load_decides() {
    LoadDuration both =
        LoadDuration.of(DurationClass.PERMANENT).shorter(LoadDuration.of(DurationClass.SHORT));
    assertEquals(LoadDuration.of(DurationClass.SHORT), both);
  }

  @Test
  void a_load_that_comes_again_counts_by_its_time_in_all() {
    assertEquals(DurationClass.SHORT, new CumulativeLoad(0.01, 200, 20).durationClass());
    assertEquals(DurationClass.MEDIUM, new CumulativeLoad(0.9, 210, 11).durationClass());
    assertEquals(DurationClass.LONG, new CumulativeLoad(6, 230, 15).durationClass());
    assertEquals(DurationClass.PERMANENT, new CumulativeLoad(24, 365.25, 11).durationClass());
    assertEquals(DurationClass.INSTANTANEOUS, new CumulativeLoad(0.001, 30, 2).durationClass());
  }

  @Test
  void a_board_where_it_is_not_to_be_used_offers_where_it_is() {
    SheetGood osb = (SheetGood) WoodCatalogue.load().byKey("osb-3-10-18").orElseThrow();
    DesignConditions outdoors =
        new DesignConditions(
            LoadDuration.of(DurationClass.MEDIUM),
            ServiceClass.CLASS_3,
            18,
            Situation.USUAL,
            Growth.CLEAR);
    Found found =
        DesignValues.of(
                osb, DesignBasis.PartialFactors.recommended(), outdoors, DesignTables.load())
            .find(DesignQuantity.BENDING, Pad.blank());
    assertEquals(
        List.of(
            "OSB/2 in service class 1",
            "OSB/3 or OSB/4 in service class 1",
            "OSB/3 or OSB/4 in service class 2"),
        assertInstanceOf(Found.Missing.class, found).offers());
  }
}
