package org.stoutwork.check.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.WeightKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.TopModels;
import org.stoutwork.quantity.Mass;
import org.stoutwork.result.CheckResult;
import org.stoutwork.working.Line;

/**
 * Tipping by hand. The feet of the ordinary bench reach from 18 to 607 mm of its 640 mm of width
 * and from 224 to 1536 mm of its 1730 mm of length; all but the top is centred between its feet.
 */
class StandingTest {

  private static final double G = 9.80665;
  private static final double FRONT = 18;
  private static final double BACK = 640 - 33;
  private static final double LEFT = 270 - 46;
  private static final double RIGHT = 1490 + 46;

  /** A bench with its mass, its centre found from the masses of its parts, and its checks. */
  private record Stood(double kg, double x, double y, List<CheckResult> checks) {

    CheckResult.Checked of(String key) {
      return checks.stream()
          .filter(c -> c.key().equals(key))
          .map(CheckResult.Checked.class::cast)
          .findFirst()
          .orElseThrow();
    }

    /** Use of the moment that keeps the bench down, with the weight at a lever. */
    void assertUse(String key, double factor, double moment, double lever) {
      double use = factor * moment / (kg * G * lever);
      assertEquals(use, of(key).utilisation(), 1e-6 * use);
    }
  }

  private static Stood check(BenchSketch sketch) {
    return check(sketch, 0, 0, 0);
  }

  /** With a weight of so many kilograms at a place. */
  private static Stood check(BenchSketch sketch, double kg, double x, double y) {
    Inquiry inquiry = new Inquiry(Benches.complete(sketch), Benches.TABLES, TopModels.GRILLAGE);
    Map<String, Double> masses = inquiry.masses();
    double all = masses.values().stream().mapToDouble(Double::doubleValue).sum();
    double top = masses.get("top");
    double base = all - top - kg;
    return new Stood(
        all,
        (top * 1730 / 2 + base * (LEFT + RIGHT) / 2 + kg * x) / all,
        (top * 640 / 2 + base * (FRONT + BACK) / 2 + kg * y) / all,
        Standing.all(inquiry));
  }

  private static boolean remarks(CheckResult.Checked check, String text) {
    return check.working().lines().stream()
        .anyMatch(line -> line instanceof Line.Remark remark && remark.text().contains(text));
  }

  @Test
  void a_push_along_tips_about_the_end_that_is_nearer_to_the_weight() {
    Stood bench = check(Benches.ordinary());
    assertTrue(bench.x() - LEFT < RIGHT - bench.x());
    bench.assertUse("tipping-along", 1.5, 250 * 845, bench.x() - LEFT);
    assertEquals("about the left side of its feet", bench.of("tipping-along").place());
    assertTrue(remarks(bench.of("tipping-along"), "at least 1.50 is asked for"));
  }

  @Test
  void the_working_of_a_push_says_the_factor_that_is_there() {
    CheckResult.Checked along = check(Benches.ordinary()).of("tipping-along");
    double there = 1.5 / along.utilisation();
    assertTrue(remarks(along, "Factor against tipping: %.2f,".formatted(there)), along.toString());
    assertTrue(remarks(along, "it is 0 where the weight is outside"));
  }

  @Test
  void a_machine_raises_the_push_and_shifts_the_weight_to_its_side() {
    Stood bench =
        check(
            Benches.ordinary()
                .weight(
                    w ->
                        w.kind(WeightKind.MACHINE)
                            .mass(Mass.ofKg(71))
                            .x(mm(1310))
                            .y(mm(130))
                            .centreAbove(mm(270))
                            .baseAlong(mm(310))
                            .baseAcross(mm(190))),
            71,
            1310,
            130);
    bench.assertUse("tipping-across", 2, 200 * (845 + 270), bench.y() - FRONT);
    bench.assertUse("tipping-along", 2, 250 * 845, RIGHT - bench.x());
    assertEquals("about the front side of its feet", bench.of("tipping-across").place());
    assertEquals("about the right side of its feet", bench.of("tipping-along").place());
  }

  @Test
  void a_push_across_tips_about_the_back_where_the_weight_is_nearer_to_it() {
    Stood bench =
        check(
            Benches.ordinary()
                .weight(
                    w ->
                        w.kind(WeightKind.MACHINE)
                            .mass(Mass.ofKg(71))
                            .x(mm(520))
                            .y(mm(505))
                            .centreAbove(mm(190))
                            .baseAlong(mm(310))
                            .baseAcross(mm(190))),
            71,
            520,
            505);
    bench.assertUse("tipping-across", 2, 200 * (845 + 190), BACK - bench.y());
    assertEquals("Tipping over a long side", bench.of("tipping-across").title());
    assertEquals("Tipping over an end", bench.of("tipping-along").title());
  }

  @Test
  void sliding_is_each_thrust_against_friction() {
    Stood bench = check(Benches.ordinary().footing(Footing.BARE));
    double friction = 0.4 * bench.kg() * G;
    assertEquals(1.5 * 250 / friction, bench.of("sliding-along").utilisation(), 1e-6);
    assertEquals(1.5 * 200 / friction, bench.of("sliding-across").utilisation(), 1e-6);
  }

  @Test
  void a_sitter_tips_by_what_he_sits_outside_the_feet() {
    Stood bench = check(Benches.ordinary());
    bench.assertUse("tipping-somebody-sitting-on-the-edge", 1.5, 1200 * FRONT, bench.y() - FRONT);
    bench.assertUse(
        "tipping-somebody-sitting-on-the-end", 1.5, 1200 * (1730 - RIGHT), RIGHT - bench.x());
  }

  /** A vise of 14 kg hangs at the middle of the jaw's way, so only the lever is taken from it. */
  @Test
  void a_pupil_on_a_jaw_sits_further_out_and_another_shoves() {
    BenchSketch sketch =
        Benches.ordinary()
            .pupils(3)
            .vise(v -> v.name("back vise").edge(Edge.BACK).at(mm(610)).outreach(mm(230)));
    Stood bench = check(sketch);
    double outside = 640 - BACK + 230;
    double alone = bench.of("tipping-sitting-on-the-jaw-of-the-back-vise").utilisation();
    double shoved =
        bench.of("tipping-sitting-on-the-jaw-of-the-back-vise-while-another-shoves").utilisation();
    assertEquals((800 * outside + 150 * 845) / (800 * outside), shoved / alone, 1e-9);
    double front = bench.of("tipping-two-pupils-sitting-on-one-edge").utilisation();
    CheckResult.Checked jaw = bench.of("tipping-sitting-on-the-jaw-of-the-back-vise");
    assertEquals(1.5 * 800 * outside, jaw.demand().value(), 1e-6);
    assertTrue(front < alone);
  }

  @Test
  void nobody_tips_a_bench_by_sitting_over_its_feet() {
    BenchSketch sketch =
        Benches.ordinary()
            .everyEndFrame(
                f ->
                    f.legs(
                        l -> l.along(mm(92)).across(mm(76)).frontInset(mm(0)).backInset(mm(33))));
    CheckResult.Checked sitter = check(sketch).of("tipping-somebody-sitting-on-the-edge");
    assertEquals(0, sitter.utilisation());
    assertFalse(remarks(sitter, "Factor against tipping"));
  }

  @Test
  void the_working_gives_the_centre_from_the_edge_it_names() {
    Stood bench = check(Benches.ordinary());
    assertCentre(bench.of("tipping-along"), bench.x(), "left end");
    assertCentre(bench.of("tipping-across"), bench.y(), "front edge");
  }

  private static void assertCentre(CheckResult.Checked check, double expected, String from) {
    Line.Given centre =
        check.working().lines().stream()
            .filter(Line.Given.class::isInstance)
            .map(Line.Given.class::cast)
            .filter(given -> given.symbol().symbol().equals("c"))
            .findFirst()
            .orElseThrow();
    assertEquals(expected, centre.value(), 1e-6 * expected);
    assertEquals(
        "centre of the weight, from the " + from + " of the top", centre.symbol().meaning());
  }

  @Test
  void a_bench_fixed_to_the_floor_is_not_checked_and_says_what_its_fixings_must_hold() {
    List<CheckResult> checks = check(Benches.ordinary().footing(Footing.FIXED)).checks();
    assertEquals(List.of("tipping", "sliding"), checks.stream().map(CheckResult::key).toList());
    for (CheckResult check : checks) {
      String reason = ((CheckResult.NotChecked) check).reason().replace('\u00a0', ' ');
      assertTrue(reason.contains("at least the thrust of 250 N together"), reason);
      assertTrue(reason.matches(".*, and \\d+ N upward at the foot that lifts most.*"), reason);
    }
  }
}
