package org.stoutwork.wood.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.source.Mark;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.moisture.ClearMeans;

class WoodCardTest {

  private final WoodCatalogue woods = WoodCatalogue.load();

  @Test
  void every_wood_has_facts_with_a_source_and_no_key_twice() {
    for (Wood wood : woods.all()) {
      List<Fact> facts = WoodCard.of(wood);
      assertTrue(facts.size() >= 2, wood.key());
      assertEquals(facts.size(), new HashSet<>(facts.stream().map(Fact::key).toList()).size());
      assertTrue(
          facts.stream().noneMatch(f -> f.property().source().document().isBlank()), wood.key());
    }
  }

  @Test
  void the_card_of_white_oak_shows_what_the_tables_print() {
    List<Fact> facts = WoodCard.of(woods.byKey("oak-white").orElseThrow());
    Fact bending =
        facts.stream().filter(f -> f.key().equals("bendingDry")).findFirst().orElseThrow();
    assertEquals("bending strength (modulus of rupture), at 12.0 % moisture", bending.words());
    assertEquals(
        "105\u00a0MPa  [FPL-GTR-190 (2010) Table 5-3a (published)]", bending.property().line());
  }

  @Test
  void at_a_moisture_content_the_weakest_mark_shows() {
    Species beech = (Species) woods.byKey("beech-european").orElseThrow();
    List<Fact> facts = WoodCard.at(beech, 9, ClearMeans.load());
    assertEquals(7, facts.size());
    assertEquals(Mark.PUBLISHED, mark(facts, "bending"));
    assertEquals(Mark.PROJECT_DEFAULT, mark(facts, "shear"));
  }

  private static Mark mark(List<Fact> facts, String key) {
    return facts.stream()
        .filter(f -> f.key().equals(key))
        .findFirst()
        .orElseThrow()
        .property()
        .mark();
  }
}
