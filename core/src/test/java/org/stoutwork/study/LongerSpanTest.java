package org.stoutwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import org.junit.jupiter.api.Test;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.quantity.Force;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.wood.time.DurationClass;

/**
 * The sag of a top against the closed form of a simple beam that bends and shears: for F spread
 * evenly over the span L, w = 5 F L³/(384 E I) + F L/(8 G A_s) with A_s = 5/6 b h.
 *
 * <p>The end frames stand so near to the ends that the top has no overhang, and the sag is measured
 * from the line between them; so only two things part the bench from the beam: the rails give way
 * more in their middle than at their ends, which bends the strips across and lets these pass some
 * load from strip to strip; and the strips twist on the way. Both are a few parts in a thousand of
 * the sag for a top as thin and rails as deep as these.
 */
class LongerSpanTest {

  private static final double CLOSE = 0.01;
  private static final double FORCE = 940;
  private static final double THICKNESS = 47;
  private static final double WIDTH = 615;
  private static final double INSET = 74;

  private static BenchResult spanning(double span) {
    BenchSketch sketch =
        BenchSketch.named("bench without overhang")
            .height(mm(852))
            .wood("beech-european")
            .top(t -> t.length(mm(span + 2 * INSET)).width(mm(WIDTH)).thickness(mm(THICKNESS)))
            .everyEndFrame(
                f ->
                    f.legs(l -> l.along(mm(96)).across(mm(84)).frontInset(mm(14)).backInset(mm(21)))
                        .topRail(r -> r.depth(mm(158)).thickness(mm(62))))
            .endFrame(f -> f.at(mm(INSET)))
            .endFrame(f -> f.at(mm(INSET + span)))
            .action(
                a ->
                    a.kind(ActionKind.SPREAD_ON_TOP)
                        .name("load over the top")
                        .force(Force.ofNewtons(FORCE))
                        .duration(DurationClass.SHORT));
    return LawBench.run(sketch);
  }

  private static double modulus(BenchResult result, String symbol) {
    return result.materials().get(0).values().stream()
        .filter(v -> v.symbol().startsWith(symbol))
        .findFirst()
        .orElseThrow()
        .measure()
        .value();
  }

  private static double sag(BenchResult result) {
    CheckResult.Checked check = LawBench.check(result, "top-sag-spread");
    return result.checked().stream()
        .filter(c -> c.key().equals("top-sag-spread"))
        .findFirst()
        .orElse(check)
        .demand()
        .value();
  }

  private static double closedForm(BenchResult result, double span) {
    double e = modulus(result, "E");
    double g = modulus(result, "G");
    double i = WIDTH * Math.pow(THICKNESS, 3) / 12;
    double shearArea = 5.0 / 6 * WIDTH * THICKNESS;
    return 5 * FORCE * Math.pow(span, 3) / (384 * e * i) + FORCE * span / (8 * g * shearArea);
  }

  @Test
  void a_top_twice_as_long_sags_as_the_closed_form_says() {
    double span = 905;
    BenchResult once = spanning(span);
    BenchResult twice = spanning(2 * span);
    assertEquals(closedForm(once, span), sag(once), CLOSE * sag(once));
    assertEquals(closedForm(twice, 2 * span), sag(twice), CLOSE * sag(twice));
    double ratio = closedForm(twice, 2 * span) / closedForm(once, span);
    // Bending alone would give 8, shear alone 2; here shear takes several parts in a hundred.
    assertTrue(ratio > 7 && ratio < 7.9, "ratio " + ratio);
    assertEquals(ratio, sag(twice) / sag(once), CLOSE * ratio);
  }
}
