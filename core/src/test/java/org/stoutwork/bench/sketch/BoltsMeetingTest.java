package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;

/** Bolts that meet bolts and pegs of other pieces in a leg. */
class BoltsMeetingTest {

  private static List<String> lines(BenchSketch sketch) {
    return assertThrows(UnsoundBench.class, () -> sketch.complete(Benches.WOODS)).faults().stream()
        .map(fault -> fault.line().replace('\u00a0', ' '))
        .distinct()
        .toList();
  }

  /** Rail and stretcher both bolted into the legs, the stretcher's upper edge at a height. */
  private static BenchSketch boltedBothWays(double stretcherTop) {
    return Benches.ordinary()
        .everyEndFrame(
            f -> f.bottomRail(r -> r.joint(j -> j.kind(JointKind.BED_BOLT).boltDiameter(mm(8)))))
        .stretcher(
            s ->
                s.name("front beam")
                    .thickness(mm(40))
                    .depth(mm(96))
                    .topEdgeAt(mm(stretcherTop))
                    .joint(j -> j.kind(JointKind.BED_BOLT).boltDiameter(mm(10))));
  }

  @Test
  void bolts_that_meet_in_a_leg_are_refused_with_their_distance() {
    // Bolt of the stretcher at 211 - 48 = 163 mm, of the rail at 154 mm; bores 11 and 9 mm.
    List<String> lines = lines(boltedBothWays(211));
    assertEquals(1, lines.size(), lines.toString());
    assertTrue(lines.get(0).contains("a bolt of the front beam at 163 mm"), lines.get(0));
    assertTrue(lines.get(0).contains("bottom rail at 154 mm"), lines.get(0));
    assertTrue(lines.get(0).contains("9 mm apart"), lines.get(0));
    assertTrue(lines.get(0).contains("at least 15 mm apart"), lines.get(0));
    assertTrue(lines.get(0).contains("up or down by 6 mm"), lines.get(0));
  }

  @Test
  void bolts_one_above_the_other_are_allowed() throws UnsoundBench {
    boltedBothWays(218).complete(Benches.WOODS);
  }

  /**
   * A rail pegged so far from its shoulder, in a leg of 76 across; the stretcher's bolt runs in the
   * middle of the leg, beside the peg.
   */
  private static BenchSketch peggedBesideBolt(double fromShoulder, double stretcherTop) {
    return Benches.ordinary()
        .everyEndFrame(
            f ->
                f.bottomRail(
                    r ->
                        r.joint(
                            j ->
                                j.kind(JointKind.MORTISE_AND_TENON)
                                    .hold(JointHold.PEGGED)
                                    .tenonLength(mm(50))
                                    .pegDiameter(mm(8))
                                    .pegFromShoulder(mm(fromShoulder)))))
        .stretcher(
            s ->
                s.name("front beam")
                    .thickness(mm(40))
                    .depth(mm(96))
                    .topEdgeAt(mm(stretcherTop))
                    .joint(j -> j.kind(JointKind.BED_BOLT).boltDiameter(mm(10))));
  }

  @Test
  void a_peg_that_meets_a_bolt_in_a_leg_is_refused_with_their_distance() throws UnsoundBench {
    // The peg runs along the bench 76/2 − 30 = 8 mm from the bolt in plan; both at 154 ± some.
    List<String> lines = lines(peggedBesideBolt(30, 203));
    assertEquals(1, lines.size(), lines.toString());
    assertTrue(lines.get(0).contains("a bolt of the front beam at 155 mm"), lines.get(0));
    assertTrue(lines.get(0).contains("a peg of the bottom rail at 154 mm"), lines.get(0));
    // √(8² + 1²) = 8.06 apart; 11/2 + 8/2 + 5 = 14.5 asked; √(14.5² − 8²) − 1 = 11.09 to move.
    assertTrue(lines.get(0).contains("8.06 mm apart"), lines.get(0));
    assertTrue(lines.get(0).contains("at least 14.5 mm apart"), lines.get(0));
    assertTrue(lines.get(0).contains("up or down by 11.1 mm"), lines.get(0));
    peggedBesideBolt(30, 203 + 11.2).complete(Benches.WOODS);
    // Nearer to the shoulder it passes the bolt: 38 − 20 = 18 mm beside it.
    peggedBesideBolt(20, 203).complete(Benches.WOODS);
  }
}
