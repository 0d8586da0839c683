package org.stoutwork.wood.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;

class WoodCatalogueTest {

  private final WoodCatalogue woods = WoodCatalogue.load();

  private String found(String name) {
    Lookup answer = woods.find(name);
    return answer.wood().map(Wood::key).orElseGet(answer::sentence);
  }

  private static List<String> keys(List<Wood> woods) {
    return woods.stream().map(Wood::key).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "oak-white, oak-white",
    "OAK-WHITE, oak-white",
    "white oak, oak-white",
    "White-Oaks, oak-white",
    "Quercus alba, oak-white",
    "English oak, oak-european",
    "Quercus robur, oak-european",
    "European beech, beech-european",
    "Fagus sylvatica, beech-european",
    "hard maple, maple-sugar",
    "rock maple, maple-sugar",
    "tulip wood, yellow-poplar",
    "tulipwoods, yellow-poplar",
    "black cherries, cherry-black",
    "red deal, redwood-european",
    "Oregon pine, douglas-fir-coast",
    "yellow birches, birch-yellow",
    "gaboon, okoume",
    "c24, C24",
    "C 24, C24",
    "d 40, D40",
    "birch ply 18, plywood-birch-18",
    "block board, blockboard-18"
  })
  void a_wood_is_found_by_any_of_its_names(String name, String key) {
    assertEquals(key, found(name));
  }

  @Test
  void oak_asks_which_and_names_the_oaks_in_wide_use_first() {
    Lookup.Ambiguous answer = assertInstanceOf(Lookup.Ambiguous.class, woods.find("oak"));
    assertEquals(
        List.of("oak-northern-red", "oak-white", "oak-european", "oak-turkey"),
        keys(answer.candidates()).subList(0, 4));
    assertTrue(answer.candidates().stream().allMatch(w -> w.key().startsWith("oak-")));
    assertTrue(answer.sentence().startsWith("which oak? say one of: oak-northern-red (Oak,"));
  }

  @Test
  void a_trade_name_of_several_species_asks_which() {
    Lookup.Ambiguous answer = assertInstanceOf(Lookup.Ambiguous.class, woods.find("southern pine"));
    assertEquals(
        Set.of("pine-loblolly", "pine-longleaf", "pine-shortleaf", "pine-slash"),
        new HashSet<>(keys(answer.candidates())));
  }

  @ParameterizedTest
  @CsvSource({"mapel, maple-", "beach, beech-", "whiteoka, oak-", "walnutt, walnut-"})
  void a_misspelling_is_answered_with_the_nearest_names(String name, String start) {
    Lookup.Unknown answer = assertInstanceOf(Lookup.Unknown.class, woods.find(name));
    boolean near = answer.nearest().stream().anyMatch(w -> w.key().startsWith(start));
    assertTrue(near, answer.sentence());
    assertEquals(5, answer.nearest().size());
  }

  @Test
  void an_empty_name_is_unknown() {
    assertInstanceOf(Lookup.Unknown.class, woods.find(" - "));
  }

  @Test
  void there_are_woods_enough_and_no_key_stands_twice() {
    assertTrue(woods.species().size() >= 170, "species: " + woods.species().size());
    assertEquals(26, woods.strengthClasses().size());
    Set<String> keys = new HashSet<>(keys(woods.all()));
    assertEquals(woods.all().size(), keys.size());
    for (String bench :
        List.of(
            "beech-european",
            "beech-american",
            "ash-european",
            "ash-white",
            "oak-white",
            "oak-northern-red",
            "oak-european",
            "maple-sugar",
            "maple-red",
            "birch-european",
            "birch-yellow",
            "cherry-black",
            "walnut-black",
            "douglas-fir-coast",
            "pine-longleaf",
            "spruce-norway",
            "larch-european",
            "yellow-poplar",
            "redwood-european",
            "pine-scots")) {
      assertTrue(woods.byKey(bench).isPresent(), bench);
    }
  }

  @Test
  void every_name_of_every_wood_finds_that_wood_among_the_answers() {
    for (Wood wood : woods.all()) {
      for (String name : wood.names()) {
        Lookup answer = woods.find(name);
        boolean among =
            (answer instanceof Lookup.Found f && f.found().equals(wood))
                || (answer instanceof Lookup.Ambiguous a && a.candidates().contains(wood));
        assertTrue(among, "%s by \"%s\": %s".formatted(wood.key(), name, answer.sentence()));
      }
    }
  }

  @Test
  void every_number_of_every_wood_has_a_source() {
    for (Species species : woods.species()) {
      species.clear().dry().values().forEach(p -> assertTrue(!p.source().document().isBlank()));
      species.clear().green().values().forEach(p -> assertTrue(p.mark() == Mark.PUBLISHED));
      assertTrue(!species.ratios().source().document().isBlank());
      assertTrue(!species.shrinkage().radial().source().document().isBlank());
    }
  }

  @Test
  void what_the_species_lacks_is_filled_from_its_kin_and_says_so() {
    Species swamp = (Species) woods.byKey("oak-swamp-white").orElseThrow();
    assertEquals(Mark.PROJECT_DEFAULT, swamp.ratios().source().mark());
    assertTrue(swamp.ratios().source().document().contains("genus Quercus"));
    assertEquals((0.082 + 0.072) / 2, swamp.ratios().et(), 1e-12);
    Species hornbeam = (Species) woods.byKey("hornbeam-european").orElseThrow();
    assertTrue(hornbeam.shrinkage().radial().source().document().contains("group of hardwoods"));
    Species maple = (Species) woods.byKey("maple-sugar").orElseThrow();
    assertEquals(Mark.PROJECT_DEFAULT, maple.ratios().source().mark());
    assertTrue(maple.ratios().source().document().contains("not printed there are means of kin"));
  }

  @Test
  void sheets_are_chosen_by_thickness() {
    assertEquals(
        List.of("osb-3-10-18", "osb-4-10-18", "osb-range-low"),
        woods.sheets(Product.OSB, 18).stream().map(SheetGood::key).toList());
    assertTrue(
        woods.sheets(Product.PLYWOOD, 21).stream()
            .anyMatch(sheet -> sheet.key().equals("plywood-birch-21")));
  }

  @Test
  void a_value_of_the_users_own_needs_a_source_and_keeps_the_rest() {
    Species beech = (Species) woods.byKey("beech-european").orElseThrow();
    Species mine =
        beech.withDry(ClearProperty.SHEAR, Property.yours(13.3, Unit.MPA, "test in our yard"));
    WoodCatalogue more = woods.with(mine);
    Species back = (Species) more.byKey("beech-european").orElseThrow();
    assertEquals(
        "13.3\u00a0MPa  [test in our yard (yours)]",
        back.clear().dry(ClearProperty.SHEAR).orElseThrow().line());
    assertEquals(beech.clear().dry(ClearProperty.BENDING), back.clear().dry(ClearProperty.BENDING));
    assertEquals(woods.all().size(), more.all().size());
    assertEquals(
        "a value of your own needs its source, such as a data sheet or a test; none was given",
        message(() -> Property.yours(13.3, Unit.MPA, " ")));
    assertEquals(
        "a value of your own must be above zero; it was 0.0 MPa",
        message(() -> Property.yours(0, Unit.MPA, "a test")));
    assertEquals(
        "a changed value must be marked \"yours\"; it was 13.3\u00a0MPa  [Book, p. 7 (published)]",
        message(
            () ->
                beech.withDry(
                    ClearProperty.SHEAR,
                    new Property(13.3, Unit.MPA, Source.published("Book", "p. 7")))));
    assertEquals(
        "shear along the grain is given in MPa; GPa was given",
        message(
            () -> beech.withDry(ClearProperty.SHEAR, Property.yours(1, Unit.GPA, "a data sheet"))));
  }

  @Test
  void a_species_of_the_users_own_starts_from_its_group() {
    Species pear = woods.blankSpecies("pear", "Pear", WoodGroup.HARDWOOD);
    assertTrue(pear.clear().dry().isEmpty());
    assertTrue(pear.ratios().source().document().contains("group of hardwoods"));
    WoodCatalogue more = woods.with(pear);
    assertEquals("pear", more.find("pears").wood().orElseThrow().key());
  }

  private static String message(Runnable faulty) {
    return assertThrows(IllegalArgumentException.class, faulty::run).getMessage();
  }
}
