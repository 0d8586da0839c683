package org.stoutwork.wood.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stoutwork.source.Mark;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class GluingTest {

  private static final WoodCatalogue WOODS = WoodCatalogue.load();
  private static final Gluing GLUING = Gluing.load();

  private static Wood wood(String key) {
    return WOODS.byKey(key).orElseThrow();
  }

  @Test
  void every_listed_wood_is_in_the_catalogue_and_was_read() {
    assertFalse(GLUING.keys().isEmpty());
    for (String key : GLUING.keys()) {
      assertEquals(Mark.PUBLISHED, GLUING.difficult(wood(key)).orElseThrow().mark(), key);
    }
  }

  @Test
  void teak_and_ipe_glue_poorly_and_jatoba_does_not() {
    assertTrue(GLUING.difficult(wood("teak")).isPresent());
    assertTrue(GLUING.difficult(wood("ipe")).isPresent());
    assertTrue(GLUING.difficult(wood("jatoba")).isEmpty());
    assertTrue(GLUING.difficult(wood("beech-european")).isEmpty());
  }
}
