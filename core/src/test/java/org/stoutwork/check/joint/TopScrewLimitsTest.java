package org.stoutwork.check.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.sketch.FixingSketch;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;

/**
 * How the screws of one rail of the ordinary bench share what is drawn from them: three of 6 mm,
 * 145.67 mm apart in a rail 437 mm long and 44 mm thick, 900 N along the bench and 700 N across.
 */
class TopScrewLimitsTest {

  private static final TimberStrength RAIL =
      new TimberStrength(22, 13, 0.4, 18, 2.2, 2.4, 8, 390, 0.47, false, 10500, 70);
  private static final TimberStrength TOP =
      new TimberStrength(31, 18, 0.5, 23, 4.1, 3.1, 12, 560, 0.61, true, 12700, 110);
  private static final StrengthFamily EC5 = new StrengthFamily.PartialFactors(0.7, 1.3, 1.15);
  private static final StrengthFamily NDS = new StrengthFamily.Allowable(1.25, 2.2);
  private static final TopScrewLimits.Held HELD = new TopScrewLimits.Held(1100, 900, 700);
  private static final String YIELDING = "screw yielding across";
  private static final String END = "screw from the end of the rail";
  private static final String THROUGH = "head pulling through";

  private static JointLimit limit(
      StrengthFamily family, String failure, Consumer<FixingSketch> words) {
    return limit(HELD, family, failure, words);
  }

  private static JointLimit limit(
      TopScrewLimits.Held held,
      StrengthFamily family,
      String failure,
      Consumer<FixingSketch> words) {
    Bench bench =
        Benches.complete(
            Benches.ordinary().top(t -> t.fixing(f -> words.accept(f.screwDiameter(mm(6))))));
    JointStrength strength = new JointStrength(RAIL, TOP, family, false);
    return new TopScrewLimits(bench, bench.endFrames().get(1), strength)
        .of(held).stream().filter(l -> l.failure().equals(failure)).findFirst().orElseThrow();
  }

  private static double shear(Consumer<FixingSketch> words) {
    return limit(NDS, YIELDING, words).demand();
  }

  @Test
  void screws_that_fit_share_alike() {
    assertEquals(Math.hypot(900 / 3.0, 700 / 3.0), shear(f -> f.holeDiameter(mm(6))), 1e-9);
  }

  @Test
  void slots_that_guide_share_along_the_bench_only() {
    assertEquals(Math.hypot(900 / 3.0, 700), shear(f -> f.slotLength(mm(13))), 1e-9);
  }

  @Test
  void one_screw_carries_all_where_the_others_have_play_both_ways() {
    assertEquals(Math.hypot(900, 700), shear(f -> f.holeDiameter(mm(9))), 1e-9);
    assertEquals(
        Math.hypot(900, 700), shear(f -> f.slotWidth(mm(7)).slotLength(mm(13)).perRail(5)), 1e-9);
  }

  @Test
  void where_all_have_play_one_bears_first_and_the_slide_is_said() {
    assertEquals(
        Math.hypot(900 / 3.0, 700), shear(f -> f.slotLength(mm(13)).heldAt(TopHeld.NOWHERE)), 1e-9);
    JointLimit loose = limit(EC5, YIELDING, f -> f.holeDiameter(mm(9)).heldAt(TopHeld.NOWHERE));
    assertEquals(Math.hypot(900, 700), loose.demand(), 1e-9);
    String said = loose.working().toString();
    assertTrue(said.contains("The top may slide by 1.5 mm until one bears"), said);
    assertTrue(said.contains("0 of 3 along the bench, 0 of 3 across it"), said);
    assertTrue(said.contains("Friction is not counted"), said);
  }

  @Test
  void the_held_screw_stands_where_it_stands() {
    double pitch = 437.0 / 3;
    JointLimit middle = limit(EC5, END, f -> f.holeDiameter(mm(9)));
    JointLimit front = limit(EC5, END, f -> f.holeDiameter(mm(9)).heldAt(TopHeld.FRONT));
    // The outermost, 72.83 mm from the end, is idle along the rail where the middle one holds:
    // 7 d = 42 mm. Where the foremost holds it is loaded towards the end and asks for more.
    assertEquals(pitch / 2, middle.capacity(), 1e-9);
    assertEquals(42, middle.demand(), 1e-9);
    assertEquals(pitch / 2, front.capacity(), 1e-9);
    assertTrue(front.demand() > 47, front.toString());
  }

  @Test
  void the_direction_of_the_shear_is_that_of_one_screw() {
    // The foremost takes all of the 2100 N along the rail and a third of the 2700 N across it, and
    // is used in full: the whole of the loaded distance is asked.
    TopScrewLimits.Held held = new TopScrewLimits.Held(1100, 2700, 2100);
    JointLimit end = limit(held, EC5, END, f -> f.slotLength(mm(13)).heldAt(TopHeld.FRONT));
    double cos = 2100 / Math.hypot(2100, 2700 / 3.0);
    assertEquals((7 + 5 * cos) * 6, end.demand(), 1e-9);
  }

  @Test
  void the_pull_is_shared_by_all_and_the_head_over_a_slot_is_used_most() {
    JointLimit slot = limit(NDS, THROUGH, f -> f.slotLength(mm(13)));
    JointLimit fits = limit(NDS, THROUGH, f -> f.holeDiameter(mm(6)));
    assertEquals(1100 / 3.0, slot.demand(), 1e-9);
    assertTrue(slot.capacity() < fits.capacity());
  }

  @Property(tries = 60)
  void no_strength_is_used_less_when_a_hole_grows(
      @ForAll @DoubleRange(min = 6, max = 12) double width,
      @ForAll @DoubleRange(min = 0, max = 9) double longer,
      @ForAll @DoubleRange(min = 0, max = 3) double wider,
      @ForAll @DoubleRange(min = 0, max = 9) double longerStill,
      @ForAll @IntRange(min = 2, max = 5) int count) {
    for (StrengthFamily family : new StrengthFamily[] {EC5, NDS}) {
      for (String failure : new String[] {YIELDING, THROUGH, "pull and shear together"}) {
        double small =
            limit(
                    family,
                    failure,
                    f -> f.perRail(count).slotWidth(mm(width)).slotLength(mm(width + longer)))
                .utilisation();
        double large =
            limit(
                    family,
                    failure,
                    f ->
                        f.perRail(count)
                            .slotWidth(mm(width + wider))
                            .slotLength(mm(width + wider + longer + longerStill)))
                .utilisation();
        double fits =
            limit(family, failure, f -> f.perRail(count).holeDiameter(mm(6))).utilisation();
        assertTrue(large >= small * (1 - 1e-12), failure);
        assertTrue(small >= fits * (1 - 1e-12), failure);
      }
    }
  }
}
