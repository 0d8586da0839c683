package org.stoutwork.check.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.result.CheckResult;

class BoltsThroughJointsTest {

  /** A stretcher with one bolt in front, at the height of the top rail. */
  private static Inquiry bolted(JointKind topRail) {
    BenchSketch sketch =
        Benches.ordinary()
            .everyEndFrame(f -> f.topRail(r -> r.joint(j -> j.kind(topRail))))
            .stretcher(
                s ->
                    s.name("front beam")
                        .thickness(mm(40))
                        .depth(mm(96))
                        .topEdgeAt(mm(775))
                        .joint(j -> j.kind(JointKind.BED_BOLT).boltDiameter(mm(10))));
    return new Inquiry(Benches.complete(sketch), Benches.TABLES);
  }

  @Test
  void a_dowelled_rail_that_a_bolt_runs_through_is_named_as_not_checked() {
    Optional<CheckResult> found = BoltsThroughJoints.check(bolted(JointKind.DOWELLED));
    assertEquals(
        "left top rail into left front leg; right top rail into right front leg",
        found.orElseThrow().part());
  }

  @Test
  void a_tenon_that_a_bolt_runs_through_is_calculated_and_not_named() {
    Inquiry inquiry = bolted(JointKind.MORTISE_AND_TENON);
    assertTrue(BoltsThroughJoints.check(inquiry).isEmpty());
    List<JointSpot> crossed =
        inquiry.at(JointLevel.MEAN).model().joints().stream()
            .filter(spot -> !spot.setting().crossed().isEmpty())
            .filter(spot -> spot.rail().equals("left top rail"))
            .toList();
    assertEquals(List.of("left front leg"), crossed.stream().map(JointSpot::post).toList());
    CrossBore bore = crossed.get(0).setting().crossed().get(0);
    assertEquals(11, bore.diameter(), 0);
    // The leg is 76 mm across: the bolt in its middle is 38 mm behind the rail's shoulder.
    assertEquals(38, bore.fromShoulder(), 1e-9);
    assertTrue(
        JointStrengthCheck.all(inquiry).stream()
            .anyMatch(c -> c.title().equals("Tenon shear where a bolt crosses it")));
  }
}
