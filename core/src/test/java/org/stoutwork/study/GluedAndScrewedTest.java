package org.stoutwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Verdict;

/** Glue lines along pieces, the screws of the top, end caps and lipping of whole benches. */
class GluedAndScrewedTest {

  private static final BenchCheck CHECK = BenchCheck.load().withoutPlate();

  private static BenchResult of(BenchSketch sketch) {
    return CHECK.run(Benches.complete(sketch));
  }

  private static Optional<CheckResult> find(BenchResult result, String key) {
    return result.checks().stream().filter(c -> c.key().equals(key)).findFirst();
  }

  private static CheckResult.Checked checked(BenchResult result, String key) {
    CheckResult check =
        find(result, key)
            .orElseThrow(
                () ->
                    new AssertionError(
                        key + " in " + result.checks().stream().map(CheckResult::key).toList()));
    return (CheckResult.Checked) check;
  }

  @Test
  void a_deepened_end_is_checked_at_its_glue_line_and_a_longer_piece_is_used_less() {
    CheckResult.Checked small = checked(of(deepened(130)), "glue-line-front-beam");
    CheckResult.Checked large = checked(of(deepened(310)), "glue-line-front-beam");
    assertTrue(small.utilisation() > large.utilisation());
    assertTrue(large.utilisation() > 0 && small.utilisation() < 1, small.toString());
  }

  private static BenchSketch deepened(double length) {
    return Benches.ordinary()
        .stretcher(
            s ->
                s.name("front beam")
                    .depth(mm(95))
                    .endDepth(mm(140))
                    .endLength(mm(length))
                    .bottomEdgeAt(mm(210)));
  }

  @Test
  void two_planks_glued_to_a_leg_meet_the_greatest_shear_and_three_a_little_less() {
    double two = legs(2).demand().value();
    double three = legs(3).demand().value();
    // The line of three planks lies a sixth of the depth off the axis: 1 - (1/3)² of the stress.
    assertEquals(8.0 / 9, three / two, 1e-9);
  }

  private static CheckResult.Checked legs(int planks) {
    BenchSketch sketch =
        Benches.ordinary()
            .everyEndFrame(f -> f.legs(l -> l.laminations(planks).laminated(Grain.ACROSS)));
    return checked(of(sketch), "glue-line-legs");
  }

  @Test
  void hide_glue_is_refused_in_a_damp_shed_and_resorcinol_is_not() {
    BenchSketch damp =
        Benches.ordinary().air(a -> a.driest(11).wettest(19.5).moistureAtAssembly(13));
    CheckResult hide = checked(of(damp.glue(GlueKind.HIDE)), "glue-climate");
    assertEquals(Verdict.INADEQUATE, hide.verdict());
    CheckResult resorcinol = checked(of(damp.glue(GlueKind.RESORCINOL)), "glue-climate");
    assertEquals(Verdict.ADEQUATE, resorcinol.verdict());
  }

  @Test
  void top_screws_are_judged_for_pull_shear_and_their_holes() {
    BenchResult result = of(Benches.ordinary());
    assertTrue(checked(result, "top-screws-screw-yielding-across").demand().value() > 0);
    assertTrue(checked(result, "top-screws-hole-drilled-for-the-screw").utilisation() < 0.9);
    BenchSketch tight = Benches.ordinary().top(t -> t.fixing(f -> f.pilotDiameter(mm(3))));
    assertEquals(
        Verdict.INADEQUATE, checked(of(tight), "top-screws-hole-drilled-for-the-screw").verdict());
  }

  @Test
  void a_smallthread_is_left_out_by_name_under_partial_factors() {
    BenchSketch graded = Benches.ordinary().wood("D40").basis(BasisChoice.PARTIAL_FACTORS);
    CheckResult pull = find(of(graded), "top-screws-thread-pulling-out").orElseThrow();
    assertEquals(Verdict.NOT_CHECKED, pull.verdict());
    BenchSketch longer =
        Benches.ordinary()
            .wood("D40")
            .basis(BasisChoice.PARTIAL_FACTORS)
            .top(t -> t.fixing(f -> f.threadLength(mm(51)).screw(FixingScrew.WOOD_SCREW)));
    assertTrue(checked(of(longer), "top-screws-thread-pulling-out").utilisation() < 1);
  }

  @Test
  void an_end_cap_glued_all_alargesplits_the_top_and_a_sliding_one_needs_its_slots() {
    BenchSketch dry = Benches.ordinary().air(a -> a.moistureAtAssembly(12).driest(6).wettest(13));
    CheckResult.Checked glued = checked(of(dry.top(t -> t.endCap(c -> c.glued(true)))), "end-cap");
    assertEquals(Verdict.INADEQUATE, glued.verdict());
    CheckResult.Checked tight =
        checked(of(dry.top(t -> t.endCap(c -> c.glued(false).slot(mm(2))))), "end-cap");
    assertEquals(Verdict.INADEQUATE, tight.verdict());
    CheckResult.Checked room = checked(of(dry.top(t -> t.endCap(c -> c.slot(mm(19))))), "end-cap");
    assertTrue(room.utilisation() < 1, room.toString());
  }

  @Test
  void a_glued_lipping_matters_only_over_the_ends() {
    BenchSketch along = Benches.ordinary().top(t -> t.lipping(l -> l.edges(Lipping.Edges.LONG)));
    assertFalse(find(of(along), "lipping-ends").isPresent());
    BenchSketch round = Benches.ordinary().top(t -> t.lipping(l -> l.edges(Lipping.Edges.ALL)));
    assertTrue(checked(of(round), "lipping-ends").utilisation() > 0);
  }

  @Test
  void more_nails_carry_more_of_a_lifted_bench() {
    List<CheckResult.Checked> sparse = nails(240);
    List<CheckResult.Checked> dense = nails(90);
    assertTrue(sparse.get(0).utilisation() > dense.get(0).utilisation());
    assertTrue(dense.get(0).utilisation() > 0);
  }

  private static List<CheckResult.Checked> nails(double spacing) {
    BenchSketch sketch =
        Benches.ordinary()
            .top(t -> t.lipping(l -> l.nailed(true).nailDiameter(mm(2)).nailSpacing(mm(spacing))));
    return List.of(checked(of(sketch), "lipping-nail-yielding-across"));
  }

  @Test
  void a_rail_left_proud_shortens_the_leg_and_the_wood_above_its_mortise() {
    BenchSketch proud = Benches.ordinary().everyEndFrame(f -> f.topRail(r -> r.proud(mm(4))));
    assertTrue(of(proud).massKg() < of(Benches.ordinary()).massKg());
  }
}
