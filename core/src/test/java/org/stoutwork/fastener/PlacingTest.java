package org.stoutwork.fastener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.fastener.placing.GeometryFactor;
import org.stoutwork.fastener.placing.Rows;
import org.stoutwork.working.Pad;

class PlacingTest {

  private static final Pad PAD = Pad.blank();

  @Test
  void slender_screws_sit_as_nails_and_stout_ones_as_bolts() {
    Distances drilled = Distances.screw(4.5, 4.5, 90, 530, true);
    assertEquals(4.5 * 5, drilled.edge(), 1e-9);
    assertEquals(4.5 * 3, drilled.freeEdge(), 1e-9);
    assertEquals(4.5 * 4, drilled.acrossGrain(), 1e-9);
    assertEquals(5.5 * 7, Distances.screw(5.5, 5.5, 90, 530, true).edge(), 1e-9);
    assertEquals(5.5 * 12, Distances.screw(5.5, 5.5, 0, 530, true).end(), 1e-9);
    assertEquals(8 * 4, Distances.screw(8, 8, 90, 530, true).edge(), 1e-9);
    assertEquals(80, Distances.screw(8, 8, 90, 530, true).end(), 1e-9);
  }

  @Test
  void wood_that_is_not_drilled_splits_sooner_and_dense_wood_soonest() {
    assertEquals(4.2 * 10, Distances.nail(4.2, 0, 350, false).alongGrain(), 1e-9);
    assertEquals(4.2 * 15, Distances.nail(4.2, 0, 480, false).alongGrain(), 1e-9);
    assertEquals(4.2 * 5, Distances.nail(4.2, 0, 480, true).alongGrain(), 1e-9);
    assertEquals(4.2 * 20, Distances.nail(4.2, 0, 480, false).end(), 1e-9);
    assertEquals(4.2 * 9, Distances.nail(4.2, 90, 480, false).edge(), 1e-9);
  }

  @Test
  void the_allowable_side_has_edges_by_the_way_of_the_force() {
    Distances across = Distances.allowable(9, 88, true, true, 7);
    assertEquals(36, across.edge());
    assertEquals(13.5, across.freeEdge());
    assertEquals(45, across.alongGrain());
    assertEquals((5 * 4 + 10) / 8.0 * 9, Distances.allowable(9, 88, true, true, 4).alongGrain());
    Distances along = Distances.allowable(9, 3, false, true, 7);
    assertEquals(31.5, along.end());
    assertEquals(22.5, Distances.allowable(9, 3, true, true, 7).end());
    assertEquals(50, Distances.allowable(5, 3, true, true, 7).end());
    assertEquals(75, Distances.allowable(5, 3, true, false, 7).end());
  }

  @Property
  void no_loaded_distance_is_less_than_the_unloaded_one(
      @ForAll @DoubleRange(min = 2, max = 12) double d,
      @ForAll @DoubleRange(min = 0, max = 90) double degrees) {
    for (Distances at :
        new Distances[] {
          Distances.bolt(d, degrees),
          Distances.screw(d, d, degrees, 460, true),
          Distances.screw(d, d, degrees, 460, false),
          Distances.allowable(d, degrees, true, true, 5),
          Distances.allowable(d, degrees, false, false, 5)
        }) {
      assertTrue(at.edge() >= at.freeEdge() - 1e-9);
      assertTrue(at.end() >= at.freeEnd() - 1e-9);
    }
  }

  @Property
  void no_row_counts_for_more_than_its_fasteners_and_none_for_less_than_a_shorter_row(
      @ForAll @IntRange(min = 1, max = 9) int n,
      @ForAll @DoubleRange(min = 4, max = 20) double diameters,
      @ForAll @DoubleRange(min = 3, max = 12) double d) {
    double one = Rows.effective(PAD, n, diameters * d, d, d);
    assertTrue(one <= n + 1e-9);
    assertTrue(Rows.effective(PAD, n + 1, diameters * d, d, d) >= one - 1e-9);
    double group = Rows.allowable(PAD, n, diameters * d, d, 3e7, 1.1e7);
    assertTrue(group <= n + 1e-9 && group > 0);
  }

  @Test
  void a_row_of_slender_nails_fourteen_diameters_apart_counts_in_full() {
    assertEquals(5, Rows.effective(PAD, 5, 14 * 3.1, 3.1, 3.1), 1e-12);
    assertEquals(Math.pow(5, 0.85), Rows.effective(PAD, 5, 10 * 3.1, 3.1, 3.1), 1e-12);
    assertEquals(Math.pow(5, 0.7), Rows.effective(PAD, 5, 7 * 3.1, 3.1, 3.1), 1e-12);
    assertEquals(Math.pow(5, 0.5), Rows.effective(PAD, 5, 4 * 3.1, 3.1, 3.1), 1e-12);
    assertEquals(Math.pow(5, 0.775), Rows.effective(PAD, 5, 8.5 * 3.1, 3.1, 3.1), 1e-12);
  }

  @Test
  void two_fasteners_between_stiff_pieces_share_a_force_alike_and_many_between_slim_ones_do_not() {
    assertEquals(2, Rows.allowable(PAD, 2, 60, 9, 1e15, 1e15), 1e-4);
    assertEquals(6, Rows.allowable(PAD, 6, 60, 5, 1e6, 1e6), 0);
    assertTrue(Rows.allowable(PAD, 6, 120, 12, 2e7, 2e7) < 5.4);
  }

  @Test
  void a_short_end_takes_its_share_off_a_stout_fastener_only() {
    assertEquals(25.0 / 36, GeometryFactor.of(PAD, 9, 90, true, 25, 99), 1e-12);
    assertEquals(25.0 / 63, GeometryFactor.of(PAD, 9, 0, false, 25, 99), 1e-12);
    assertEquals(30.0 / 36, GeometryFactor.of(PAD, 9, 0, true, 90, 30), 1e-12);
    assertEquals(1, GeometryFactor.of(PAD, 6, 0, false, 5, 5));
  }
}
