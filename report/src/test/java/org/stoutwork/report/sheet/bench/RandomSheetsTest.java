package org.stoutwork.report.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.print.BenchSheet;
import org.stoutwork.result.BenchResult;

class RandomSheetsTest {

  private static Optional<BenchResult> result(BenchSketch sketch) {
    try {
      return Optional.of(Sheets.CHECK.run(sketch));
    } catch (UnsoundBench e) {
      return Optional.empty();
    }
  }

  @Property(tries = 6)
  void any_sound_bench_prints_without_a_fault(
      @ForAll @IntRange(min = 700, max = 3900) int length,
      @ForAll @IntRange(min = 350, max = 1150) int width,
      @ForAll @IntRange(min = 500, max = 1050) int height,
      @ForAll @IntRange(min = 30, max = 120) int thickness,
      @ForAll Duty duty,
      @ForAll Edge edge,
      @ForAll @IntRange(min = 1, max = 700) int outreach) {
    BenchSketch sketch =
        BenchSketch.named("bench of " + length)
            .wood("ash, European")
            .duty(duty)
            .height(Length.ofMm(height))
            .top(
                t ->
                    t.length(Length.ofMm(length))
                        .width(Length.ofMm(width))
                        .thickness(Length.ofMm(thickness)))
            .vise(v -> v.edge(edge).at(Length.ofMm(width / 3.0)).outreach(Length.ofMm(outreach)));
    result(sketch)
        .ifPresent(
            found -> {
              SheetText print = SheetText.of(BenchSheet.pdf(found, Sheets.A4));
              assertTrue(print.says("bench of " + length));
              print.ink().forEach(ink -> assertTrue(ink > 150, ink.toString()));
            });
  }
}
