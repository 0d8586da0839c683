package org.stoutwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Mortise;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.check.Inquiry;
import org.stoutwork.result.CheckResult;

/** What holes and slots for the top's screws take out of its rails. */
class TopScrewHolesTest {

  private static Bench slotted(double width, TopHeld held) {
    return Benches.complete(
        Benches.ordinary()
            .top(
                t ->
                    t.fixing(
                        f ->
                            f.screwDiameter(mm(6))
                                .perRail(3)
                                .slotWidth(mm(width))
                                .slotLength(mm(width + 9))
                                .heldAt(held))));
  }

  @Test
  void every_screw_takes_its_slot_and_the_one_that_holds_its_bore() {
    Bench bench = slotted(11, TopHeld.MIDDLE);
    List<Mortise> holes =
        new Inquiry(bench, Benches.TABLES)
            .at(JointLevel.MEAN).model().parts().stream()
                .filter(p -> p.name().equals("left top rail"))
                .findFirst()
                .orElseThrow()
                .mortises()
                .stream()
                .filter(m -> m.joint().equals("screws of the top"))
                .toList();
    double length = bench.endFrames().get(0).topRail().length().mm();
    assertEquals(3, holes.size());
    for (int i = 0; i < 3; i++) {
      assertEquals(length * (2 * i + 1) / 6, holes.get(i).at(), 1e-9);
      assertEquals(i == 1 ? 6 : 11, holes.get(i).sizeY(), 1e-9);
      assertEquals(i == 1 ? 6 : 20, holes.get(i).to() - holes.get(i).from(), 1e-9);
    }
  }

  /**
   * Nothing else of the rail changes: its use grows as its net width falls, where a slot governs.
   */
  @Property(tries = 8)
  void a_rail_is_used_no_less_for_a_wider_slot(
      @ForAll @DoubleRange(min = 7, max = 11) double width,
      @ForAll @DoubleRange(min = 0.5, max = 6) double more) {
    for (String key : List.of("bending-left-top-rail", "shear-left-top-rail")) {
      double before = use(slotted(width, TopHeld.NOWHERE), key);
      double after = use(slotted(width + more, TopHeld.NOWHERE), key);
      assertTrue(after >= before * (1 - 1e-6), key + " " + before + " " + after);
    }
  }

  @Test
  void a_slot_through_two_fifths_of_a_rail_tells() {
    Bench slight = slotted(6, TopHeld.NOWHERE);
    double thickness = slight.endFrames().get(0).topRail().thickness().mm();
    double wide = 0.4 * thickness;
    double most = (thickness - 6) / (thickness - wide);
    double ratio =
        use(slotted(wide, TopHeld.NOWHERE), "shear-left-top-rail")
            / use(slight, "shear-left-top-rail");
    assertTrue(ratio > 1.1 && ratio < most * 1.01, ratio + ", at most " + most);
  }

  private static double use(Bench bench, String key) {
    return BenchCheck.load().withoutPlate().run(bench).checks().stream()
        .filter(c -> c.key().equals(key))
        .map(c -> ((CheckResult.Checked) c).utilisation())
        .findFirst()
        .orElseThrow();
  }
}
