package org.stoutwork.reference.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Length;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;

/** Mass, sliding and tipping of a bench of C24 (420 kg/m³, EN 338:2016 Table 1) by hand. */
class StandingByHandTest {

  /**
   * Volumes in mm³: top 1800·610·58 = 63 684 000; legs 4·84·66·762 = 16 898 112; rails between the
   * legs, 422 long, 2·96·40·422 = 3 240 960 and 2·82·38·422 = 2 629 904; stretchers, 1500 - 300 -
   * 84 = 1116 long, 2·110·36·1116 = 8 838 720. Together 95 291 696 mm³, 40.0225 kg.
   */
  private static final double KG = 95_291_696 * 420e-9;

  private static final double WEIGHT = KG * 9.80665;

  private static BenchResult result;

  @BeforeAll
  static void check() throws UnsoundBench {
    BenchSketch sketch =
        BenchSketch.named("bench by hand")
            .height(mm(820))
            .wood("C24")
            .duty(Duty.GENERAL_JOINERY)
            .footing(Footing.BARE)
            .top(t -> t.length(mm(1800)).width(mm(610)).thickness(mm(58)))
            .everyEndFrame(
                f ->
                    f.legs(l -> l.along(mm(84)).across(mm(66)).frontInset(mm(25)).backInset(mm(31)))
                        .topRail(r -> r.depth(mm(96)).thickness(mm(40)))
                        .bottomRail(r -> r.depth(mm(82)).thickness(mm(38)).bottomEdgeAt(mm(100))))
            .endFrame(f -> f.at(mm(300)))
            .endFrame(f -> f.at(mm(1500)));
    for (StretcherLine line : new StretcherLine[] {StretcherLine.FRONT, StretcherLine.BACK}) {
      sketch.stretcher(s -> s.line(line).depth(mm(110)).thickness(mm(36)).centreAt(mm(205)));
    }
    result = BenchCheck.load().run(sketch);
  }

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static CheckResult.Checked of(String key) {
    return result.checked().stream().filter(c -> c.key().equals(key)).findFirst().orElseThrow();
  }

  @Test
  void mass_is_volume_times_density() {
    assertEquals(KG, result.massKg(), 1e-6 * KG);
  }

  /** Thrust 250 N, 1.5 times; friction 0.4 of 392.49 N: 375/157.0 = 2.389. */
  @Test
  void sliding_is_thrust_over_friction() {
    assertEquals(1.5 * 250 / (0.4 * WEIGHT), of("sliding-along").utilisation(), 1e-6);
  }

  /**
   * Shove 200 N at 820 mm, 1.5 times: 246 000 N·mm. The top's centre lies 305 mm from its front
   * edge, all else 302 mm, halfway between the legs: together 302 + 3·63 684 000/95 291 696 = 304.0
   * mm. The back faces of the legs stand at 610 - 31 = 579 mm: lever 275.0 mm, 107 930 N·mm; the
   * front ones have 279.0 mm. 246 000/107 930 = 2.279.
   */
  @Test
  void tipping_is_overturning_over_righting_moment() {
    double lever = 579 - (302 + 3 * 63_684_000.0 / 95_291_696);
    double use = 1.5 * 200 * 820 / (WEIGHT * lever);
    assertEquals(2.279, use, 1e-3);
    assertEquals(use, of("tipping-across").utilisation(), 1e-6 * use);
  }
}
