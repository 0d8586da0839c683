package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;

/** Laps and bridles of rail and stretcher that need one place in a leg of 92 by 76. */
class LapsMeetingTest {

  /** Bottom rail from 110 to 198 above the floor; the stretcher 90 deep from a height. */
  private static BenchSketch sketch(
      Consumer<JointSketch> rail, Consumer<JointSketch> stretcher, double from) {
    return Benches.ordinary()
        .everyEndFrame(f -> f.bottomRail(r -> r.joint(rail)))
        .stretcher(
            s ->
                s.name("beam")
                    .thickness(mm(40))
                    .depth(mm(90))
                    .bottomEdgeAt(mm(from))
                    .joint(stretcher));
  }

  private static List<String> lines(BenchSketch sketch) {
    return assertThrows(UnsoundBench.class, () -> sketch.complete(Benches.WOODS)).faults().stream()
        .map(fault -> fault.line().replace('\u00a0', ' '))
        .toList();
  }

  private static Consumer<JointSketch> lap(double part) {
    return j -> j.kind(JointKind.HALF_LAP).hold(JointHold.GLUED).lapDepth(mm(part));
  }

  private static Consumer<JointSketch> bridle(double tongue) {
    return j -> j.kind(JointKind.BRIDLE).hold(JointHold.GLUED).tenonThickness(mm(tongue));
  }

  private static Consumer<JointSketch> tenon(double length) {
    return j -> j.kind(JointKind.MORTISE_AND_TENON).tenonLength(mm(length)).tenonThickness(mm(14));
  }

  @Test
  void two_laps_at_one_height_are_refused_by_name_with_the_way_out() {
    assertEquals(
        List.of(
            "stretchers[0].joint is such that the half-lap of the beam, which takes the whole depth"
                + " of a leg of the left end frame, stands in the way of the bridle of the bottom"
                + " rail, which goes 76 mm into it from 150 mm above the floor; pieces that cross"
                + " must be clear of one another: move one up or down by 48 mm, or take a tenon for"
                + " one of them."),
        lines(sketch(bridle(13), lap(22), 150)));
  }

  @Test
  void the_same_laps_one_above_the_other_are_accepted() {
    assertEquals(1, Benches.complete(sketch(bridle(13), lap(22), 199)).stretchers().size());
  }

  @Test
  void a_tenon_may_reach_up_to_the_lap_on_the_other_face_or_to_the_tongue_in_the_middle() {
    // The leg is 76 across: a lap of 22 leaves 54 of it, a tongue of 14 in its middle 31 before it.
    assertEquals(1, Benches.complete(sketch(tenon(54), lap(22), 150)).stretchers().size());
    assertEquals(
        "stretchers[0].joint is such that the half-lap of the beam, which takes the whole depth of"
            + " a leg of the left end frame, stands in the way of the joint of the bottom rail,"
            + " which goes 55 mm into it from 150 mm above the floor; at most 54 mm deep there, or"
            + " move one piece up or down by",
        lines(sketch(tenon(55), lap(22), 150)).get(0).replaceFirst(" by [0-9.]+ mm\\.$", " by"));
    assertEquals(1, Benches.complete(sketch(tenon(31), bridle(14), 150)).stretchers().size());
    assertEquals(1, lines(sketch(tenon(32), bridle(14), 150)).size());
  }

  /** Of three end frames, the middle one has a stretcher of either bay, from both faces. */
  @Test
  void a_lapped_rail_leaves_no_room_for_tenons_from_both_faces_of_a_middle_leg() {
    BenchSketch two = sketch(lap(20), tenon(30), 150);
    assertEquals(1, Benches.complete(two).stretchers().size());
    BenchSketch three = sketch(lap(20), tenon(30), 150).endFrame(f -> f.at(mm(1650)));
    assertEquals(1, lines(three).size());
  }

  /** A lapped stretcher runs on through the middle leg: its cut-out is one. */
  @Test
  void laps_of_two_bays_are_one_cut_out_of_a_middle_leg() {
    Bench bench =
        Benches.complete(
            Benches.ordinary()
                .endFrame(f -> f.at(mm(1650)))
                .stretcher(s -> s.thickness(mm(40)).joint(lap(39)).bottomEdgeAt(mm(250))));
    assertEquals(3, bench.endFrames().size());
    // Of 76 across a lap of 54 would leave 22, less than three tenths.
    assertEquals(
        1,
        lines(
                Benches.ordinary()
                    .endFrame(f -> f.at(mm(1650)))
                    .stretcher(s -> s.thickness(mm(60)).joint(lap(54)).bottomEdgeAt(mm(250))))
            .stream()
            .filter(line -> line.startsWith("endFrames[1].legs"))
            .count());
  }
}
