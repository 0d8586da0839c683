package org.stoutwork.reference.benches;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;

/** Tipping of a whole bench against a sum by hand (statics of a rigid body). */
class TippingByHandTest {

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static BenchResult bench() throws UnsoundBench {
    return BenchCheck.load()
        .run(
            BenchSketch.named("bench like in front and at the back")
                .height(mm(850))
                .wood("beech-european")
                .top(t -> t.length(mm(1700)).width(mm(640)).thickness(mm(60)))
                .everyEndFrame(
                    f ->
                        f.legs(
                            l ->
                                l.along(mm(90))
                                    .across(mm(80))
                                    .frontInset(mm(20))
                                    .backInset(mm(20))))
                .endFrame(f -> f.at(mm(300)))
                .endFrame(f -> f.at(mm(1400)))
                .action(
                    a ->
                        a.kind(ActionKind.THRUST_ACROSS)
                            .name("push across")
                            .force(Force.ofNewtons(210))));
  }

  @Test
  void a_bench_tips_over_its_long_side_as_by_hand() throws UnsoundBench {
    BenchResult result = bench();
    double density =
        result.materials().get(0).values().stream()
            .filter(v -> v.measure().unit().equals(org.stoutwork.quantity.Unit.KG_PER_M3))
            .findFirst()
            .orElseThrow()
            .measure()
            .value();
    // Top 1.700 · 0.640 · 0.060 = 0.06528 m³; four legs 0.090 · 0.080 · 0.790 = 0.022752 m³
    assertEquals(0.06528 * density, result.masses().get("top"), 1e-6 * density);
    assertEquals(0.022752 * density, result.masses().get("legs"), 0.03 * 0.022752 * density);
    CheckResult.Checked tipping =
        result.checked().stream()
            .filter(c -> c.key().equals("tipping-across"))
            .findFirst()
            .orElseThrow();
    // Alike in front and at the back, the weight acts at 320 mm; the feet begin at 20 mm.
    double resisting = result.massKg() * 9.80665 * (320 - 20);
    assertEquals(resisting, tipping.capacity().value(), 1e-9 * resisting);
    // 210 N at 850 mm = 178.5 N·m, times the factor that the duty asks for, 1.5 or less.
    double factor = tipping.demand().value() / (210 * 850);
    assertTrue(factor >= 1 && factor <= 1.5, "factor " + factor);
    assertEquals(factor * 178_500 / resisting, tipping.utilisation(), 1e-9);
  }
}
