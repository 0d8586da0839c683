package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.SOFT;
import static org.stoutwork.joint.ByHand.WOOD;

import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Nail;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.joint.screwed.Nailing;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;

/** What screws, nails and their places cannot be, just beyond and just at the boundary. */
class FasteningRefusalTest {

  private static Screwing screw(double thickness, double hole, double pilot) {
    return new Screwing(WOOD, thickness, SOFT, HARD, 70, 25, false, ScrewHole.round(hole), pilot);
  }

  private static Nailing nail(double thickness, double pilot) {
    return new Nailing(new Nail(2.6, 61, 5.9, 620), thickness, SOFT, HARD, false, pilot);
  }

  private static Seat seat(double end, double edge, double along, double across, double degrees) {
    return new Seat("lipping", end, edge, along, across, degrees, 6.5);
  }

  private static void refused(String words, Runnable making) {
    String message = assertThrows(IllegalArgumentException.class, making::run, words).getMessage();
    assertTrue(message.contains(words), message);
  }

  @Test
  void a_screw_just_as_long_as_its_piece_is_thick_is_refused_and_a_longer_one_taken() {
    refused("does not reach through 83.0 mm", () -> screw(83, 5.2, 3));
    refused("does not reach through 0.0 mm", () -> screw(0, 5.2, 3));
    assertEquals(0.1, screw(82.9, 5.2, 3).reach(), 1e-12);
  }

  @Test
  void a_hole_just_as_wide_as_the_core_lets_a_screw_pass() {
    refused("a hole of 3.4 mm does not let a core of 3.5 mm pass", () -> screw(31, 3.4, 3));
    assertEquals(3.5, screw(31, 3.5, 3).hole().length());
  }

  @Test
  void a_hole_for_the_thread_is_drilled_up_to_the_diameter_of_the_screw() {
    refused("a hole of 5.3 mm does not hold", () -> screw(31, 5.2, 5.3));
    refused("a hole of -0.1 mm does not hold", () -> screw(31, 5.2, -0.1));
    assertTrue(screw(31, 5.2, 5.2).drilled());
    assertFalse(screw(31, 5.2, 0).drilled());
  }

  @Test
  void a_nail_just_as_long_as_its_piece_is_thick_is_refused_and_a_longer_one_taken() {
    refused("does not reach through 61.0 mm", () -> nail(61, 2));
    refused("does not reach through 0.0 mm", () -> nail(0, 2));
    assertEquals(0.5, nail(60.5, 2).reach());
  }

  @Test
  void a_hole_for_a_nail_is_drilled_up_to_its_diameter() {
    refused("a hole of 2.7 mm does not hold", () -> nail(17, 2.7));
    refused("a hole of -0.1 mm does not hold", () -> nail(17, -0.1));
    assertTrue(nail(17, 2.6).drilled());
    assertFalse(nail(17, 0).drilled());
  }

  @Test
  void a_fastener_sits_inside_its_piece_and_beside_its_neighbours() {
    String words = "distances in the lipping must be above 0 mm";
    refused(words, () -> seat(0, 13, 12, 9, 60));
    refused(words, () -> seat(19, 0, 12, 9, 60));
    refused(words, () -> seat(19, 13, 0, 9, 60));
    refused(words, () -> seat(19, 13, 12, 0, 60));
  }

  @Test
  void a_force_lies_along_the_grain_across_it_or_between() {
    refused("the angle 0° to 90°", () -> seat(19, 13, 12, 9, -0.1));
    refused("the angle 0° to 90°", () -> seat(19, 13, 12, 9, 90.1));
    assertEquals(0, seat(19, 13, 12, 9, 0).degrees());
    assertEquals(90, seat(19, 13, 12, 9, 90).degrees());
  }
}
