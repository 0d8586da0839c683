package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.setting.PostEdges;

/** Where the joint of a middle stretcher lies in the depth of the rails that it meets. */
class MiddleInRailTest {

  /** Bottom rails from 120 to 180 above the floor. */
  private static BenchSketch lowRail(Consumer<StretcherSketch> words) {
    return BenchSketch.named("low rail")
        .wood("beech-european")
        .top(t -> t.length(mm(1730)).width(mm(640)))
        .everyEndFrame(
            f ->
                f.legs(l -> l.along(mm(92)).across(mm(76)))
                    .bottomRail(r -> r.depth(mm(60)).thickness(mm(41)).centreAt(mm(150))))
        .stretcher(
            s -> {
              s.line(StretcherLine.MIDDLE).name("spine").thickness(mm(43));
              words.accept(s);
            });
  }

  private static List<String> lines(Consumer<StretcherSketch> words) {
    return assertThrows(UnsoundBench.class, () -> lowRail(words).complete(Benches.WOODS))
        .faults()
        .stream()
        .map(fault -> fault.line().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void bolts_above_the_rail_are_refused_with_its_reach() {
    // End from 115 to 235, bolts at 175 ± 30 with bores of 11; the tenon of 80 from 135 to 215.
    List<String> lines =
        lines(
            s ->
                s.depth(mm(120))
                    .centreAt(mm(175))
                    .joint(j -> j.kind(JointKind.BED_BOLT).bolts(2).boltSpacing(mm(60))));
    assertEquals(2, lines.size(), lines.toString());
    assertEquals(
        "stretchers[0].joint is such that its tenon and bolts would reach from 135 mm to 215 mm"
            + " above the floor; the bottom rail of the left end frame reaches from 120 mm to"
            + " 180 mm, and the joint must lie within it: move the stretcher, or make it or its"
            + " joint less deep.",
        lines.get(0));
  }

  @Test
  void tenons_dowels_screws_and_laps_beyond_the_rail_are_refused() {
    for (JointKind kind :
        List.of(
            JointKind.MORTISE_AND_TENON,
            JointKind.DOWELLED,
            JointKind.SCREWED_BUTT,
            JointKind.HALF_LAP)) {
      List<String> lines = lines(s -> s.depth(mm(120)).centreAt(mm(175)).joint(j -> j.kind(kind)));
      assertTrue(lines.get(0).contains("reaches from 120 mm to 180 mm"), lines.toString());
    }
  }

  @Test
  void it_is_the_end_of_a_deepened_stretcher_that_must_meet_the_rail() {
    // 80 deep at 170, its end 130 deep below: from 80 to 210, the tenon 22 within that.
    List<String> lines =
        lines(s -> s.depth(mm(80)).centreAt(mm(170)).endDepth(mm(130)).endLength(mm(210)));
    assertTrue(lines.get(0).contains("its tenon would reach from 102 mm to 188 mm"), lines.get(0));
    lines = lines(s -> s.depth(mm(80)).centreAt(mm(250)).endDepth(mm(106)).endLength(mm(210)));
    assertTrue(lines.get(0).contains("with the middle of its end 237 mm"), lines.get(0));
  }

  @Test
  void the_setting_knows_how_far_the_rail_reaches_beyond_the_end() {
    Bench bench =
        Benches.complete(
            lowRail(
                s ->
                    s.depth(mm(74))
                        .centreAt(mm(153))
                        .joint(j -> j.kind(JointKind.BED_BOLT).tenonHeight(mm(38)))));
    BenchModel model =
        BenchModel.of(
            bench, Timbers.of(bench, Benches.TABLES)::get, JointLevel.MEAN, FloorContact.HELD);
    PostEdges edges =
        model.joints().stream()
            .filter(j -> j.rail().equals("spine"))
            .findFirst()
            .orElseThrow()
            .setting()
            .edges();
    // End from 116 to 190, rail from 120 to 180.
    assertEquals(-4, edges.below(), 1e-9);
    assertEquals(-10, edges.above(), 1e-9);
    assertTrue(
        model.joints().stream()
            .filter(j -> !j.rail().equals("spine"))
            .allMatch(j -> j.setting().edges().equals(PostEdges.NONE)));
  }
}
