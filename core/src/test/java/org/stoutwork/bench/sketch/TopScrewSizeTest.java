package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.stoutwork.quantity.Length;

class TopScrewSizeTest {

  private static BenchSketch bench(double height) {
    return BenchSketch.named("loft bench").height(Length.ofMm(height));
  }

  /** Legs of 85, so rails of 45: 8 mm would ask for 24 mm to the edge, where 22.5 mm are. */
  @Test
  void screws_fit_usual_rails_where_nothing_is_said_of_them() {
    assertEquals(6, TopScrewSize.of(bench(838), 70));
  }

  /** Legs of 95, so rails of 50. */
  @Test
  void a_high_bench_has_rails_for_thicker_screws() {
    assertEquals(8, TopScrewSize.of(bench(912), 70));
  }

  @Test
  void what_is_said_of_rails_goes_before_the_usual() {
    BenchSketch thin = bench(912).everyEndFrame(f -> f.topRail(r -> r.thickness(Length.ofMm(37))));
    assertEquals(5, TopScrewSize.of(thin, 70));
  }

  /** 0.85 of 38 mm holds seven diameters of 4.5 mm, not of 5 mm. */
  @Test
  void a_thin_top_takes_thinner_screws() {
    assertEquals(4.5, TopScrewSize.of(bench(912), 38));
    assertEquals(3, TopScrewSize.of(bench(912), 9));
  }
}
