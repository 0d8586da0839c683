package org.stoutwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;
import static org.stoutwork.wood.design.DesignQuantity.BENDING;
import static org.stoutwork.wood.design.DesignQuantity.TENSION_PARALLEL;

import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.DogHolesSketch;
import org.stoutwork.bench.sketch.TopSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Strengths;
import org.stoutwork.quantity.Force;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.wood.time.DurationClass;

/** Rows of dog holes in whole benches: what they take from the top and what their dogs press. */
class DogHolesTest {

  private static final BenchCheck PLATED = BenchCheck.load();
  private static final BenchCheck CHECK = PLATED.withoutPlate();

  private static BenchSketch bench(double size, double fromFront) {
    return Benches.ordinary()
        .top(
            t ->
                t.dogHoles(
                    d ->
                        d.size(mm(size))
                            .fromFront(mm(fromFront))
                            .fromLeft(mm(170))
                            .spacing(mm(110))
                            .count(9)
                            .clampForce(Force.ofNewtons(2300))));
  }

  private static BenchResult of(BenchSketch sketch) {
    return CHECK.run(Benches.complete(sketch));
  }

  private static CheckResult.Checked checked(BenchResult result, String key) {
    return result.checks().stream()
        .filter(c -> c.key().equals(key))
        .map(c -> (CheckResult.Checked) c)
        .findFirst()
        .orElseThrow(() -> new AssertionError(key));
  }

  @Test
  void the_three_checks_of_a_row_come_out_by_hand() {
    BenchSketch sketch = bench(21, 83);
    double t = Benches.complete(sketch).top().thicknessMm();
    BenchResult result = of(sketch);
    // Allowable stresses: forces as they are.
    double force = 2300;
    // A stiff dog 15 mm above the top: force over depth, and its moment about the middle of it.
    double mouth = force / (21 * t) + force * (15 + t / 2) * 6 / (21 * t * t);
    assertEquals(mouth, checked(result, "dog-hole-wall").demand().value(), 1e-9 * mouth);
    // Between two holes there is less wood than beyond the first.
    double shear = 2 * force / (2 * (110 - 21) * t);
    assertEquals(shear, checked(result, "dog-hole-end").demand().value(), 1e-9 * shear);
    // The dogs pull the strip of 2·83 - 21 mm and bend it by the height of the work above its
    // middle.
    CheckResult.Checked strip = checked(result, "dog-hole-strip");
    double b = 2 * 83 - 21;
    Bench whole = Benches.complete(sketch);
    Strengths strengths = new Inquiry(whole, Benches.TABLES).strengths();
    String wood = whole.top().layers().get(0).wood();
    double ft = strengths.value(wood, DurationClass.MEDIUM, TENSION_PARALLEL).orElseThrow();
    double fm = strengths.value(wood, DurationClass.MEDIUM, BENDING).orElseThrow();
    double use = force / (b * t) / ft + 6 * force * (t / 2 + 15) / (b * t * t) / fm;
    assertEquals(use, strip.demand().value(), 1e-9 * use);
  }

  @Property(tries = 6)
  void larger_holes_never_help(
      @ForAll @DoubleRange(min = 8, max = 30) double size,
      @ForAll @DoubleRange(min = 1.05, max = 2) double factor,
      @ForAll @DoubleRange(min = 70, max = 500) double fromFront) {
    BenchResult small = of(bench(size, fromFront));
    BenchResult large = of(bench(size * factor, fromFront));
    for (String key : List.of("dog-hole-end", "dog-hole-strip")) {
      assertTrue(checked(large, key).utilisation() > checked(small, key).utilisation(), key);
    }
  }

  /**
   * Rows so near to one another that every strip loses about half its width, and no force moves.
   */
  @Test
  void strips_are_judged_by_what_the_holes_leave_of_them() {
    BenchSketch riddled = Benches.ordinary();
    int width = (int) Benches.complete(riddled).top().width().mm();
    for (int y = 40; y < width - 25; y += 80) {
      double fromFront = y;
      riddled.top(
          t ->
              t.dogHoles(
                  d -> d.size(mm(40)).fromFront(mm(fromFront)).fromLeft(mm(40)).spacing(mm(80))));
    }
    BenchResult whole = of(Benches.ordinary());
    BenchResult pierced = of(riddled);
    for (String key : List.of("bending-top-along", "shear-top-along", "shear-top-across")) {
      double ratio = checked(pierced, key).utilisation() / checked(whole, key).utilisation();
      assertTrue(ratio > 1.6 && ratio < 2.6, key + " " + ratio);
    }
  }

  /** Six rows, so that the holes count for more than the mesh that they change. */
  @Test
  void plate_and_grillage_both_sag_more_with_holes() {
    BenchSketch riddled = Benches.ordinary();
    for (int row = 0; row < 6; row++) {
      double fromFront = 55 + 90 * row;
      riddled.top(t -> t.dogHoles(d -> d.size(mm(38)).fromFront(mm(fromFront)).spacing(mm(105))));
    }
    for (BenchCheck check : List.of(PLATED, CHECK)) {
      double ratio = sag(check, riddled) / sag(check, Benches.ordinary());
      assertTrue(ratio > 1.05 && ratio < 1.5, "sag with holes over sag without: " + ratio);
    }
  }

  private static double sag(BenchCheck check, BenchSketch sketch) {
    return checked(check.run(Benches.complete(sketch)), "top-sag-point").demand().value();
  }

  /** Layers that lie loose on one another bend with twice the stress of one solid top. */
  @Test
  void loose_layers_are_bowed_more() {
    double solid = strip(t -> t.thickness(mm(60)));
    double loose =
        strip(
            t ->
                t.layer(l -> l.thickness(mm(30)))
                    .layer(l -> l.thickness(mm(30)))
                    .hold(new LayerHold.Loose()));
    assertTrue(loose > 1.5 * solid, solid + " " + loose);
  }

  private static double strip(Consumer<TopSketch> words) {
    BenchSketch sketch =
        BenchSketch.named("layers").wood("beech-european").height(mm(850)).top(words);
    sketch.top(t -> t.dogHoles(d -> d.size(mm(20)).fromFront(mm(90))));
    return checked(of(sketch), "dog-hole-strip").demand().value();
  }

  /** The edge of the strip of holes lies a hair beside a line of bearings. */
  @Test
  void holes_that_end_beside_a_bearing_leave_no_sliver() {
    BenchSketch sketch =
        BenchSketch.named("hair")
            .wood("beech-european")
            .top(t -> t.length(mm(2100)).width(mm(514)).thickness(mm(46)).dogHoles(d -> {}))
            .everyEndFrame(f -> f.legs(l -> l.across(mm(116.5)).frontInset(mm(27.3))));
    assertTrue(sag(PLATED, sketch) > 0);
  }

  @Test
  void dog_holes_lighten_the_top_by_their_wood() {
    double without = of(Benches.ordinary()).masses().get("top");
    var top = Benches.complete(bench(40, 150)).top();
    double area = top.length().mm() * top.width().mm();
    double share = 9 * Math.PI / 4 * 40 * 40 / area;
    assertEquals(without * (1 - share), of(bench(40, 150)).masses().get("top"), 1e-9 * without);
  }

  @Test
  void impossible_rows_are_refused_by_name() {
    refused(row(d -> d.size(mm(24)).spacing(mm(22))), "top.dogHoles[0].spacing", "25 mm");
    refused(row(d -> d.size(mm(30)).fromFront(mm(10))), "top.dogHoles[0].fromFront", "16 mm");
    refused(row(d -> d.fromLeft(mm(300)).spacing(mm(200)).count(40)), "dogHoles[0].count", "fit");
    BenchSketch two =
        Benches.ordinary()
            .top(
                t ->
                    t.dogHoles(d -> d.size(mm(20)).fromFront(mm(90)))
                        .dogHoles(
                            d -> d.size(mm(30)).shape(DogHoles.Shape.SQUARE).fromFront(mm(110))));
    refused(two, "top.dogHoles[1].fromFront", "25 mm");
  }

  private static BenchSketch row(Consumer<DogHolesSketch> words) {
    return Benches.ordinary().top(t -> t.dogHoles(words));
  }

  private static void refused(BenchSketch sketch, String key, String limit) {
    UnsoundBench fault = assertThrows(UnsoundBench.class, () -> sketch.complete(Benches.WOODS));
    String words = fault.getMessage().replace('\u00a0', ' ');
    assertTrue(words.contains(key) && words.contains(limit), words);
  }
}
