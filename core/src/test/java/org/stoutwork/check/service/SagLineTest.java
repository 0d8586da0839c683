package org.stoutwork.check.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.check.GoverningCase;

/**
 * Sag below lines between supports, by hand: end frames at 200, 900 and 1500 mm of a top of 1800
 * mm, legs at 60 and 540 mm of 640 mm.
 */
class SagLineTest {

  private static final TopGrid GRID =
      new TopGrid(
          List.of(25.0, 60.0, 300.0, 540.0, 615.0),
          List.of(50.0, 200.0, 550.0, 900.0, 1150.0, 1500.0, 1740.0),
          640,
          1800);

  private static final SagLine LINES = new SagLine(GRID, List.of(1, 3, 5), List.of(1, 3));

  /** A top that has moved as a plane has not sagged: any sag comes from the dent alone. */
  private static SagLine.Heights plane(int line, int station, double dent) {
    return (l, s) ->
        3
            - 0.004 * GRID.stations().get(s)
            + 0.007 * GRID.lines().get(l)
            - (l == line && s == station ? dent : 0);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "2, 2", "4, 4", "1, 6", "3, 2"})
  void a_dent_in_a_tilted_plane_is_its_own_depth_both_ways(int line, int station) {
    SagLine.Heights heights = plane(line, station, 1.3);
    assertEquals(1.3, LINES.along(heights, line, station), 1e-12);
    double onLegs = line == 1 || line == 3 ? 0 : 1.3;
    assertEquals(onLegs, LINES.across(heights, line, station), 1e-12);
  }

  /**
   * Station 1150 lies 250 of 600 mm from the middle frame: 7/12 of its drop and 5/12 of the last.
   */
  @Test
  void supports_that_sink_are_taken_off_by_their_share() {
    SagLine.Heights heights = (l, s) -> s == 3 ? -1.2 : s == 5 ? -2.4 : s == 4 ? -5 : Double.NaN;
    double line = -1.2 * 350 / 600 - 2.4 * 250 / 600;
    assertEquals(line + 5, LINES.along(heights, 2, 4), 1e-12);
    assertEquals(line + 5, LINES.sag(heights, new SagSpot(null, 2, 4, true, 0)), 1e-12);
  }

  /** Line 615 lies 75 mm beyond the legs 480 mm apart: the line runs on by 75/480. */
  @Test
  void beyond_the_last_leg_the_line_runs_on() {
    SagLine.Heights heights = (l, s) -> l == 1 ? -0.8 : l == 3 ? -2.0 : l == 4 ? -4.1 : Double.NaN;
    double line = -2.0 - 1.2 * 75 / 480;
    assertEquals(line + 4.1, LINES.across(heights, 4, 2), 1e-12);
    assertEquals(line + 4.1, LINES.sag(heights, new SagSpot(null, 4, 2, false, 0)), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0, 300", "1, 700", "2, 700", "3, 700", "4, 600", "5, 600", "6, 480"})
  void the_span_along_is_the_bay_or_twice_the_overhang(int station, double span) {
    assertEquals(span, LINES.spanAlong(station));
    assertEquals(span, LINES.span(new SagSpot(null, 0, station, true, 0)));
  }

  @ParameterizedTest
  @CsvSource({"0, 70", "1, 480", "2, 480", "3, 480", "4, 150"})
  void the_span_across_is_that_of_the_legs_or_twice_the_overhang(int line, double span) {
    assertEquals(span, LINES.spanAcross(line));
    assertEquals(span, LINES.span(new SagSpot(null, line, 2, false, 0)));
  }

  @Test
  void a_support_does_not_sag_below_itself() {
    assertTrue(LINES.onSupport(new SagSpot(null, 2, 3, true, 0)));
    assertFalse(LINES.onSupport(new SagSpot(null, 2, 3, false, 0)));
    assertTrue(LINES.onSupport(new SagSpot(null, 1, 2, false, 0)));
    assertFalse(LINES.onSupport(new SagSpot(null, 1, 2, true, 0)));
  }

  @Test
  void the_terms_of_a_spot_add_up_to_its_sag() {
    for (boolean along : new boolean[] {true, false}) {
      for (int line = 0; line < 5; line++) {
        for (int station = 0; station < 7; station++) {
          SagLine.Heights heights = (l, s) -> Math.sin(2.1 * l + 0.7 * s);
          double sum = 0;
          for (GoverningCase.Term term : LINES.terms(along, line, station)) {
            sum += term.factor() * heightOf(heights, term.node());
          }
          double sag = LINES.sag(heights, new SagSpot(null, line, station, along, 0));
          assertEquals(sag, sum, 1e-12);
        }
      }
    }
  }

  private static double heightOf(SagLine.Heights heights, String node) {
    for (int line = 0; line < 5; line++) {
      for (int station = 0; station < 7; station++) {
        if (TopLoads.node(line, station).equals(node)) {
          return heights.at(line, station);
        }
      }
    }
    throw new AssertionError(node);
  }
}
