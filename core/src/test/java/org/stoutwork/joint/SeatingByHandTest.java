package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.joint.ByHand.COACH;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.HARD;
import static org.stoutwork.joint.ByHand.NDS;
import static org.stoutwork.joint.ByHand.SOFT;
import static org.stoutwork.joint.ByHand.WOOD;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.StrengthFamily;

/**
 * Where a coach screw of 10 mm and a wood screw of 5.2 mm must sit: EN 1995-1-1 Tables 8.2, 8.4,
 * 8.6 and NDS 12.5 with its commentary, from memory; between unloaded and loaded a straight line.
 */
class SeatingByHandTest {

  private static final double FAR = Double.POSITIVE_INFINITY;
  private static final RowForces SHEAR = RowForces.one(0, 600);

  private static Screwing screwing(Screw screw, double pilot) {
    return new Screwing(
        screw, 37, SOFT, HARD, 70, 25, false, ScrewHole.round(screw.diameter()), pilot);
  }

  private static List<JointLimit> limits(
      Screw screw,
      double pilot,
      StrengthFamily family,
      RowForces forces,
      List<Seat> head,
      List<Seat> point) {
    return ScrewCapacity.utilisations(screwing(screw, pilot), family, forces, head, point, true);
  }

  private static List<JointLimit> head(Screw screw, double pilot, StrengthFamily f, Seat seat) {
    return limits(screw, pilot, f, SHEAR, List.of(seat), List.of());
  }

  private static void asks(
      double least, double given, boolean kept, List<JointLimit> limits, String failure) {
    JointLimit limit = Found.named(limits, failure);
    assertEquals(least, limit.demand(), 1e-4, failure);
    assertEquals(given, limit.capacity(), failure);
    assertEquals(kept, limit.utilisation() <= 1, failure);
  }

  @Test
  void a_stout_screw_sits_as_a_bolt_does_in_both_pieces() {
    // 600 N of 1775.749 N: u = 0.337886.
    Seat rail = new Seat("rail", 54, 31, 47, 39, 30, 3.7);
    Seat post = new Seat("post", 67, 32, FAR, FAR, 60, 8);
    List<JointLimit> limits = limits(COACH, 7, EC5, SHEAR, List.of(rail), List.of(post));
    // 30°: end max((1 + 6·0.5)·10, 40) = 40 to max(70, 80) = 80: 40 + u·40; edge 30 both ways;
    // (4 + 0.866025)·10 = 48.6603 along; 4·10 across.
    asks(53.5154, 54, true, limits, "screw from the end of the rail");
    asks(30, 31, true, limits, "screw from the edge of the rail");
    asks(48.6603, 47, false, limits, "spacing of screws along the grain");
    asks(40, 39, false, limits, "spacing of screws across the grain");
    // 60°: end (1 + 6·0.866025)·10 = 61.9615 to 80: 61.9615 + u·18.0385;
    // edge 30 to (2 + 2·0.866025)·10 = 37.3205: 30 + u·7.3205.
    asks(68.0565, 67, false, limits, "screw from the end of the post");
    asks(32.4735, 32, false, limits, "screw from the edge of the post");
  }

  @Test
  void a_distance_without_an_end_is_not_asked_for() {
    Seat endless = new Seat("rail", FAR, FAR, FAR, FAR, 30, 3.7);
    List<JointLimit> limits = head(COACH, 7, EC5, endless);
    assertFalse(limits.stream().anyMatch(limit -> limit.failure().contains("rail")));
    assertFalse(limits.stream().anyMatch(limit -> limit.failure().contains("spacing")));
  }

  @Test
  void an_edge_alike_loaded_and_unloaded_that_is_not_kept_fails_by_name() {
    Seat near = new Seat("rail", FAR, 29, FAR, FAR, 30, 3.7);
    asks(30, 29, false, head(COACH, 7, EC5, near), "screw from the edge of the rail");
  }

  @Test
  void a_slender_screw_sits_as_a_nail_does_and_needs_more_room_without_a_hole() {
    Seat seat = new Seat("rail", FAR, FAR, 27, 19, 0, 7);
    // Drilled (4 + 1)·5.2 along and 3·5.2 across.
    List<JointLimit> drilled = head(WOOD, 3, EC5, seat);
    asks(26, 27, true, drilled, "spacing of screws along the grain");
    asks(15.6, 19, true, drilled, "spacing of screws across the grain");
    // Not drilled, up to 420 kg/m³ and from 5 mm on: (5 + 7)·5.2 and 5·5.2.
    List<JointLimit> driven = head(WOOD, 0, EC5, seat);
    asks(62.4, 27, false, driven, "spacing of screws along the grain");
    asks(26, 19, false, driven, "spacing of screws across the grain");
  }

  @Test
  void the_american_advice_for_slender_screws_turns_with_the_force() {
    Seat along = new Seat("rail", FAR, 12, 53, 16, 45, 7);
    Seat across = new Seat("rail", FAR, 14, 53, 16, 46, 7);
    // Drilled: edge 2.5·5.2 = 13; along the force 10·5.2 = 52, beside it 3·5.2 = 15.6.
    List<JointLimit> with = head(WOOD, 3, NDS, along);
    asks(13, 12, false, with, "screw from the edge of the rail");
    asks(52, 53, true, with, "spacing of screws along the grain");
    asks(15.6, 16, true, with, "spacing of screws across the grain");
    // Above 45°: 3·5.2 = 15.6 along and 5·5.2 = 26 across.
    List<JointLimit> turned = head(WOOD, 3, NDS, across);
    asks(13, 14, true, turned, "screw from the edge of the rail");
    asks(15.6, 53, true, turned, "spacing of screws along the grain");
    asks(26, 16, false, turned, "spacing of screws across the grain");
  }

  @Test
  void rows_of_a_short_stout_screw_across_the_grain_may_sit_closer() {
    // 70°, 3.7 diameters long: (5·3.7 + 10)/8·10 = 35.625 along, 3·10 across, end 2·10.
    Seat seat = new Seat("rail", 21, FAR, 35, 31, 70, 3.7);
    List<JointLimit> limits = head(COACH, 7, NDS, seat);
    asks(20, 21, true, limits, "screw from the end of the rail");
    asks(35.625, 35, false, limits, "spacing of screws along the grain");
    asks(30, 31, true, limits, "spacing of screws across the grain");
  }

  @Test
  void a_pulled_screw_keeps_four_distances_of_its_own_in_the_piece_that_holds_it() {
    RowForces pulled = RowForces.one(350, 0);
    Seat post = new Seat("post", 101, 39, 69, 51, 60, 8);
    List<JointLimit> ec5 = limits(COACH, 7, EC5, pulled, List.of(), List.of(post));
    asks(100, 101, true, ec5, "pulled screw from the end of the post");
    asks(40, 39, false, ec5, "pulled screw from the edge of the post");
    asks(70, 69, false, ec5, "spacing of pulled screws along the grain");
    asks(50, 51, true, ec5, "spacing of pulled screws across the grain");
    Seat close = new Seat("post", 39, 16, 41, 38, 60, 8);
    List<JointLimit> nds = limits(COACH, 7, NDS, pulled, List.of(), List.of(close));
    asks(40, 39, false, nds, "pulled screw from the end of the post");
    asks(15, 16, true, nds, "pulled screw from the edge of the post");
    asks(40, 41, true, nds, "spacing of pulled screws along the grain");
    asks(40, 38, false, nds, "spacing of pulled screws across the grain");
    List<JointLimit> under = limits(COACH, 7, EC5, pulled, List.of(post), List.of());
    assertFalse(under.stream().anyMatch(limit -> limit.failure().contains("pulled")));
  }

  @Test
  void a_row_loses_strength_by_its_spacing_along_the_force() {
    String across = "screw yielding across";
    // 963.295 N with full distances, as worked for one screw; full spacing 4·10 mm.
    Seat turned = new Seat("post", 200, FAR, 26, 30, 46, 8);
    Seat straight = new Seat("post", 200, FAR, 26, 30, 45, 8);
    JointLimit beside =
        Found.named(limits(COACH, 7, NDS, SHEAR, List.of(), List.of(turned)), across);
    assertEquals(963.295333 * 30 / 40, beside.capacity(), 1e-3);
    JointLimit inLine =
        Found.named(limits(COACH, 7, NDS, SHEAR, List.of(), List.of(straight)), across);
    assertEquals(963.295333 * 26 / 40, inLine.capacity(), 1e-3);
    // Of two pieces the worse counts: end 45 of 7·10 mm in softwood along the grain.
    Seat end = new Seat("rail", 45, FAR, FAR, FAR, 20, 3.7);
    JointLimit both =
        Found.named(limits(COACH, 7, NDS, SHEAR, List.of(end), List.of(turned)), across);
    assertEquals(963.295333 * 45 / 70, both.capacity(), 1e-3);
    assertTrue(both.capacity() < beside.capacity());
  }
}
