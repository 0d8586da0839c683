package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;

/** Joints of stretchers that come into a middle leg or rail from both of its bays. */
class MiddleLegsTest {

  private static BenchSketch sketch(StretcherLine line, double along, Consumer<JointSketch> words) {
    return BenchSketch.named("three frames")
        .wood("beech-european")
        .top(t -> t.length(mm(2310)).width(mm(640)))
        .everyEndFrame(f -> f.legs(l -> l.along(mm(along)).across(mm(76))))
        .endFrame(f -> f.at(mm(300)))
        .endFrame(f -> f.at(mm(1170)))
        .endFrame(f -> f.at(mm(2020)))
        .stretcher(
            s -> s.line(line).depth(mm(96)).thickness(mm(38)).centreAt(mm(176)).joint(words));
  }

  private static Joint joint(StretcherLine line, double along, Consumer<JointSketch> words) {
    Bench bench = Benches.complete(sketch(line, along, words));
    return bench.stretchers().get(0).joint().joint();
  }

  @Test
  void every_blind_joint_fits_a_middle_leg_by_default() {
    for (double along : new double[] {71, 90, 118}) {
      for (JointHold hold : JointHold.values()) {
        boolean fromOutside = hold.screwed() || (hold.wedged() && !hold.fox());
        if (!fromOutside) {
          joint(StretcherLine.FRONT, along, j -> j.kind(JointKind.MORTISE_AND_TENON).hold(hold));
        }
      }
      for (JointKind kind :
          List.of(
              JointKind.HAUNCHED_TENON,
              JointKind.STUB_TENON,
              JointKind.BED_BOLT,
              JointKind.DOWELLED,
              JointKind.HOUSING)) {
        joint(StretcherLine.BACK, along, j -> j.kind(kind));
      }
    }
  }

  @Test
  void kerfs_are_two_thirds_of_the_shortened_tenon() {
    // 0.45 of 90 is 40.5: 40 mm, of which two thirds are 26.7.
    MortiseAndTenon tenon =
        (MortiseAndTenon)
            joint(
                StretcherLine.FRONT,
                90,
                j -> j.kind(JointKind.MORTISE_AND_TENON).hold(JointHold.FOX_WEDGED));
    assertEquals(40, tenon.length(), 0);
    assertEquals(27, ((Fit.Wedged) tenon.fit()).kerf(), 0);
  }

  @Test
  void dowels_take_less_than_half_of_the_leg() {
    DowelledButt dowels =
        (DowelledButt) joint(StretcherLine.FRONT, 90, j -> j.kind(JointKind.DOWELLED));
    assertEquals(40, dowels.inPost(), 0);
    assertEquals(40, dowels.inRail(), 0);
  }

  @Test
  void screws_that_the_next_piece_covers_are_refused_in_words() {
    List<Consumer<JointSketch>> screwed =
        List.of(
            j -> j.kind(JointKind.SCREWED_BUTT),
            j -> j.kind(JointKind.HOUSING).hold(JointHold.SCREWED));
    for (Consumer<JointSketch> words : screwed) {
      List<String> lines =
          assertThrows(
                  UnsoundBench.class,
                  () -> sketch(StretcherLine.FRONT, 90, words).complete(Benches.WOODS))
              .faults()
              .stream()
              .map(BenchFault::line)
              .toList();
      assertEquals(
          List.of(
              "stretchers[0].joint is screwed through a middle leg; a screw into the end of one"
                  + " piece is driven from the far face, and there the piece of the next bay stands"
                  + " in the way: take a tenon, dowels, bed bolts or a glued housing."),
          lines);
    }
    assertTrue(
        joint(StretcherLine.FRONT, 90, j -> j.kind(JointKind.HOUSING)).title().contains("housing"));
  }
}
