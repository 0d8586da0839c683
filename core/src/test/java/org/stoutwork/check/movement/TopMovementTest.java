package org.stoutwork.check.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.TopModels;
import org.stoutwork.result.CheckResult;

/** What the top needs at its screws and what it gets there. */
class TopMovementTest {

  private static CheckResult of(Bench bench) {
    return TopMovement.check(new Inquiry(bench, Benches.TABLES, TopModels.GRILLAGE));
  }

  private static CheckResult.Checked checked(BenchSketch sketch) {
    return (CheckResult.Checked) of(Benches.complete(sketch));
  }

  private static BenchSketch held(TopHeld at) {
    return Benches.ordinary()
        .air(a -> a.moistureAtAssembly(9).driest(7).wettest(13))
        .top(t -> t.fixing(f -> f.screwDiameter(mm(6)).slotLength(mm(15)).heldAt(at)));
  }

  @Test
  void the_room_is_that_of_the_screw_where_it_stands() {
    // Beech, flat-sawn, 145.67 mm from the middle screw: 145.67·C·4 = Δ; s = 2·Δ + 1, and twice
    // as much beyond the ease from the foremost to the hindmost.
    CheckResult.Checked middle = checked(held(TopHeld.MIDDLE));
    CheckResult.Checked front = checked(held(TopHeld.FRONT));
    assertEquals(9, middle.capacity().value(), 1e-12);
    assertEquals(2, (front.demand().value() - 1) / (middle.demand().value() - 1), 1e-9);
    double c = (middle.demand().value() - 1) / 2 / 4 / (437.0 / 3);
    assertEquals(0.0040, c, 0.0006);
    assertTrue(middle.place().contains("146 mm off"), middle.place());
  }

  @Test
  void a_single_screw_asks_for_no_room() {
    CheckResult one =
        of(Benches.complete(Benches.ordinary().top(t -> t.fixing(f -> f.perRail(1)))));
    assertInstanceOf(CheckResult.NotChecked.class, one);
  }

  @Property(tries = 40)
  void no_bench_fails_by_a_slot_that_nobody_named_unless_the_rail_can_spare_no_more(
      @ForAll @DoubleRange(min = 380, max = 1100) double width,
      @ForAll @DoubleRange(min = 800, max = 980) double height,
      @ForAll @DoubleRange(min = 6, max = 12) double driest,
      @ForAll @DoubleRange(min = 0, max = 9) double swing,
      @ForAll @DoubleRange(min = 0, max = 1) double assembly,
      @ForAll @IntRange(min = 2, max = 9) int count) {
    Bench bench =
        Benches.complete(
            BenchSketch.named("law bench")
                .wood("beech-european")
                .height(mm(height))
                .air(
                    a ->
                        a.driest(driest)
                            .wettest(driest + swing)
                            .moistureAtAssembly(driest + assembly * swing))
                .top(t -> t.width(mm(width)).fixing(f -> f.perRail(count))));
    CheckResult.Checked check = (CheckResult.Checked) of(bench);
    double most =
        Math.max(
            bench.top().fixing().screwDiameter().mm(),
            Math.floor(ScrewRow.of(bench, bench.endFrames().get(0)).pitch() / 2));
    double slot = bench.top().fixing().hole().length();
    if (check.utilisation() > 1) {
      assertEquals(most, slot, 1e-9);
      assertTrue(
          bench.defaults().stream()
              .anyMatch(d -> d.reason().endsWith("more than the rail can spare")));
    }
    assertTrue(slot <= most);
  }
}
