package org.stoutwork.wood.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.source.Source;

class FrictionTest {

  @Test
  void planed_wood_grips_less_than_sawn_wood_in_every_direction_and_moisture() {
    List<Friction> table = Friction.table();
    List<Friction> planed =
        table.stream().filter(f -> f.surface().equals("planed timber")).toList();
    assertEquals(4, planed.size());
    for (Friction smooth : planed) {
      Friction rough =
          table.stream()
              .filter(f -> f.surface().equals("sawn timber"))
              .filter(f -> f.condition().equals(smooth.condition()))
              .filter(f -> f.moisture().equals(smooth.moisture()))
              .findFirst()
              .orElseThrow();
      assertTrue(smooth.high() < rough.low());
    }
  }

  @Test
  void a_range_that_runs_downward_is_refused() {
    assertEquals(
        "a range of friction runs upward from above 0; it was 0.5 to 0.3",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new Friction(
                        "oak", "slate", "", "dry", "static", 0.5, 0.3, Source.yours("a test")))
            .getMessage());
  }
}
