package org.stoutwork.report.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final List<String> WORDS =
      List.of(
          "width",
          "depth",
          "topRail",
          "bottom-rail",
          "endVise",
          "fiber",
          "compression-only",
          "rx",
          "ry",
          "moisture",
          "legWidth");

  @ParameterizedTest(name = "{0} is near {1}")
  @CsvSource({
    "widht, width",
    "wdith, width",
    "wid, ''",
    "depht, depth",
    "deptth, depth",
    "top_rail, topRail",
    "Top Rail, topRail",
    "toprails, topRail",
    "bottomRail, bottom-rail",
    "end vice, endVise",
    "fibre, fiber",
    "CompressionOnly, compression-only",
    "compresion-olny, compression-only",
    "moist, ''",
    "mositure, moisture",
    "widthOfLeg, legWidth",
    "rz, rx",
    "q, ''",
    "length, ''"
  })
  void the_nearest_word_is_found_or_none(String given, String nearest) {
    Optional<String> expected = nearest.isEmpty() ? Optional.empty() : Optional.of(nearest);
    assertEquals(expected, Nearest.to(given, WORDS));
  }

  @Test
  void a_very_long_word_is_near_nothing_and_costs_little() {
    assertEquals(Optional.empty(), Nearest.to("w".repeat(1_000_000), WORDS));
  }

  @Property
  void slips_are_counted_alike_in_both_directions(
      @ForAll @AlphaChars @StringLength(max = 12) String a,
      @ForAll @AlphaChars @StringLength(max = 12) String b) {
    int slips = Slips.between(a, b);
    assertEquals(slips, Slips.between(b, a));
    assertEquals(a.equals(b), slips == 0);
    assertTrue(slips <= Math.max(a.length(), b.length()));
    assertTrue(slips >= Math.abs(a.length() - b.length()));
  }

  @Property
  void a_swap_of_neighbours_is_one_slip(
      @ForAll @AlphaChars @StringLength(min = 2, max = 12) String word) {
    String swapped = "" + word.charAt(1) + word.charAt(0) + word.substring(2);
    assertEquals(word.equals(swapped) ? 0 : 1, Slips.between(word, swapped));
  }
}
