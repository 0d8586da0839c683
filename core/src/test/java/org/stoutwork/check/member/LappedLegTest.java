package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.sketch.JointKind;

/** What laps and bridles leave of a leg of 92 along the bench and 76 across it. */
class LappedLegTest {

  private static Bench bench(JointKind stretcher, double centre) {
    return Benches.complete(
        Benches.ordinary()
            .endFrame(f -> f.at(mm(1650)))
            .everyEndFrame(
                f -> f.bottomRail(r -> r.joint(j -> j.tenonThickness(mm(17)).tenonLength(mm(30)))))
            .stretcher(
                s ->
                    s.thickness(mm(41))
                        .depth(mm(90))
                        .centreAt(mm(centre))
                        .joint(j -> j.kind(stretcher).lapDepth(mm(27)).tenonThickness(mm(23)))));
  }

  private static List<Cut> cuts(Bench bench, double at) {
    BenchModel model =
        BenchModel.of(
            bench, Timbers.of(bench, Benches.TABLES)::get, JointLevel.MEAN, FloorContact.HELD);
    return Cuts.of(model).stream()
        .filter(cut -> cut.part().name().equals(bench.endFrames().get(1).name() + " front leg"))
        .filter(cut -> Math.abs(cut.at() - at) < 1)
        .toList();
  }

  @Test
  void laps_of_two_bays_are_taken_out_of_the_middle_leg_once() {
    List<Cut> found = cuts(bench(JointKind.HALF_LAP, 300), 300);
    assertEquals(92.0 * (76 - 27), found.get(0).area(), 1e-9);
    // Bent across the bench, what is left is a rectangle 92 wide and 49 deep.
    assertEquals(92 * 49.0 * 49 / 6, found.get(0).sideways().sectionModulus(), 1e-6);
  }

  @Test
  void a_tongue_in_the_middle_leaves_two_cheeks() {
    List<Cut> found = cuts(bench(JointKind.BRIDLE, 300), 300);
    assertEquals(92.0 * (76 - 23), found.get(0).area(), 1e-9);
    double inertia = 92 * (76.0 * 76 * 76 - 23.0 * 23 * 23) / 12;
    assertEquals(inertia / 38, found.get(0).sideways().sectionModulus(), 1e-6);
  }

  /** The lap is cut from the face that the rail of the front leg enters: its mortise lies in it. */
  @Test
  void a_lap_and_a_mortise_that_meet_are_taken_out_together() {
    List<Cut> found = cuts(bench(JointKind.HALF_LAP, 165), 165);
    double together = found.stream().mapToDouble(Cut::area).min().orElseThrow();
    assertEquals(92.0 * (76 - 27) - 17 * (30 - 27), together, 1e-9);
  }
}
