package org.stoutwork.wood.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodTables;
import org.stoutwork.wood.design.DesignConditions.Situation;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.grade.GrowthDefects;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.wood.time.ServiceClass;
import org.stoutwork.working.Pad;

@Domain(DomainContext.Global.class)
@Domain(WoodTables.class)
class DesignLawsTest {

  private static final DesignBasis CLEAR = new DesignBasis.ClearWoodAllowable();
  private static final DesignBasis PARTIAL = DesignBasis.PartialFactors.recommended();
  private final DesignTables tables = DesignTables.load();

  @Provide
  Arbitrary<DesignQuantity> asked() {
    return Arbitraries.of(DesignQuantity.class);
  }

  private OptionalDouble value(
      Wood wood, DesignBasis basis, DesignConditions conditions, DesignQuantity what) {
    return DesignValues.of(wood, basis, conditions, tables).find(what, Pad.blank()).value();
  }

  private static DesignConditions conditions(
      DurationClass duration, ServiceClass service, double moisture, Growth growth) {
    return new DesignConditions(
        LoadDuration.of(duration), service, moisture, Situation.USUAL, growth);
  }

  private static DesignConditions plain(double moisture) {
    return DesignConditions.indoors(DurationClass.MEDIUM, moisture, Growth.CLEAR);
  }

  @Property
  void a_longer_load_never_raises_an_allowable_stress(
      @ForAll Species species,
      @ForAll("asked") DesignQuantity what,
      @ForAll DurationClass one,
      @ForAll DurationClass other) {
    DurationClass longer = one.compareTo(other) <= 0 ? one : other;
    DurationClass shorter = one.compareTo(other) <= 0 ? other : one;
    DesignConditions c = plain(11);
    OptionalDouble held = value(species, CLEAR, c.under(LoadDuration.of(longer)), what);
    OptionalDouble brief = value(species, CLEAR, c.under(LoadDuration.of(shorter)), what);
    assertTrue(held.orElse(0) <= brief.orElse(0));
  }

  @Property
  void a_longer_load_and_a_damper_place_never_raise_a_design_strength(
      @ForAll StrengthClass timber,
      @ForAll("asked") DesignQuantity what,
      @ForAll DurationClass one,
      @ForAll DurationClass other,
      @ForAll ServiceClass dry,
      @ForAll ServiceClass damp) {
    DurationClass longer = one.compareTo(other) <= 0 ? one : other;
    DurationClass shorter = one.compareTo(other) <= 0 ? other : one;
    ServiceClass better = dry.number() <= damp.number() ? dry : damp;
    ServiceClass worse = dry.number() <= damp.number() ? damp : dry;
    double poor =
        value(timber, PARTIAL, conditions(longer, worse, 14, Growth.CLEAR), what).orElseThrow();
    double good =
        value(timber, PARTIAL, conditions(shorter, better, 14, Growth.CLEAR), what).orElseThrow();
    assertTrue(poor <= good);
  }

  @Property
  void drier_wood_is_never_weaker(
      @ForAll Species species,
      @ForAll("asked") DesignQuantity what,
      @ForAll @DoubleRange(min = 5, max = 20) double moisture,
      @ForAll @DoubleRange(min = 0, max = 9) double more) {
    if (what != DesignQuantity.DENSITY_MEAN && what != DesignQuantity.DENSITY_LOW) {
      double damp = value(species, CLEAR, plain(moisture + more), what).orElse(0);
      double dry = value(species, CLEAR, plain(moisture), what).orElse(0);
      assertTrue(damp <= dry * (1 + 1e-12), species.key() + " " + what);
    }
  }

  @Property
  void worse_growth_never_raises_a_value(
      @ForAll Species species,
      @ForAll("asked") DesignQuantity what,
      @ForAll GrowthDefects one,
      @ForAll GrowthDefects other,
      @ForAll @DoubleRange(min = 6, max = 25) double run) {
    GrowthDefects cleaner = one.compareTo(other) <= 0 ? one : other;
    GrowthDefects worse = one.compareTo(other) <= 0 ? other : one;
    Growth good = Growth.straight(cleaner);
    Growth bad = new Growth(worse, OptionalDouble.of(run));
    DurationClass d = DurationClass.SHORT;
    double high = value(species, CLEAR, DesignConditions.indoors(d, 9, good), what).orElse(0);
    double low = value(species, CLEAR, DesignConditions.indoors(d, 9, bad), what).orElse(0);
    assertTrue(low <= high);
  }

  @Property
  void the_low_value_lies_below_the_mean(@ForAll Species species, @ForAll StrengthClass timber) {
    for (List<DesignQuantity> pair :
        List.of(
            List.of(DesignQuantity.MODULUS_LOW, DesignQuantity.MODULUS_MEAN),
            List.of(DesignQuantity.SHEAR_MODULUS_LOW, DesignQuantity.SHEAR_MODULUS_MEAN),
            List.of(DesignQuantity.DENSITY_LOW, DesignQuantity.DENSITY_MEAN))) {
      DesignConditions c = plain(10);
      double low = value(species, CLEAR, c, pair.get(0)).orElse(0);
      assertTrue(low < value(species, CLEAR, c, pair.get(1)).orElse(1));
      double classLow = value(timber, PARTIAL, c, pair.get(0)).orElseThrow();
      assertTrue(classLow < value(timber, PARTIAL, c, pair.get(1)).orElseThrow());
    }
  }

  @Property
  void the_bases_never_mix(
      @ForAll Species species,
      @ForAll StrengthClass timber,
      @ForAll SheetGood sheet,
      @ForAll("asked") DesignQuantity what) {
    DesignConditions c = plain(10);
    assertEquals(what.isMean(), value(timber, CLEAR, c, what).isPresent());
    assertTrue(what.isMean() || value(species, PARTIAL, c, what).isEmpty());
    if (what.isStrength()) {
      boolean allowable = value(sheet, CLEAR, c, what).isPresent();
      boolean design = value(sheet, PARTIAL, c, what).isPresent();
      assertTrue(!(allowable && design), sheet.key());
    }
  }

  @Property
  void means_are_the_same_under_both_bases(
      @ForAll Species species, @ForAll("asked") DesignQuantity what) {
    if (what.isMean()) {
      DesignConditions c = plain(13);
      assertEquals(value(species, CLEAR, c, what), value(species, PARTIAL, c, what));
    }
  }

  @Property
  void the_working_ends_in_the_value_and_every_line_has_a_source(
      @ForAll Species species,
      @ForAll StrengthClass timber,
      @ForAll SheetGood sheet,
      @ForAll("asked") DesignQuantity what) {
    for (Wood wood : List.of(species, timber, sheet)) {
      for (DesignBasis basis : List.of(CLEAR, PARTIAL)) {
        DesignValues values = DesignValues.of(wood, basis, plain(9), tables);
        DesignValues.Explained explained = values.explain(what);
        assertEquals(values.find(what, Pad.blank()), explained.found());
        if (explained.found() instanceof Found.Known known) {
          assertTrue(!explained.working().lines().isEmpty());
          assertTrue(!explained.working().sources().isEmpty());
          explained.working().result().ifPresent(r -> assertEquals(known.number(), r, 0));
        } else {
          Found.Missing missing = assertInstanceOf(Found.Missing.class, explained.found());
          assertTrue(missing.sentence().contains(what.meaning()));
          assertTrue(explained.working().lines().isEmpty());
        }
      }
    }
  }

  @Property
  void every_species_with_a_weight_answers_every_question_under_the_clear_wood_basis(
      @ForAll Species species, @ForAll("asked") DesignQuantity what) {
    boolean weighed = value(species, CLEAR, plain(12), DesignQuantity.DENSITY_MEAN).isPresent();
    assertEquals(weighed, value(species, CLEAR, plain(12), what).isPresent(), species.key());
  }
}
