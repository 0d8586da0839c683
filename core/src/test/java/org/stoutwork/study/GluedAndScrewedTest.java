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
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.quantity.Force;
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
    BenchSketch graded =
        Benches.ordinary()
            .wood("D40")
            .basis(BasisChoice.PARTIAL_FACTORS)
            .top(t -> t.fixing(f -> f.threadLength(mm(27))));
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

  @Test
  void a_bench_lifted_by_its_lipping_weighs_more_by_the_factor_of_permanent_loads() {
    BenchSketch plain = nailed(90).wood("D40");
    CheckResult.Checked allowable =
        checked(of(nailed(90).wood("beech-european")), "lipping-nail-yielding-across");
    BenchResult result = of(plain.basis(BasisChoice.PARTIAL_FACTORS));
    CheckResult.Checked partial = checked(result, "lipping-nail-yielding-across");
    // Half of the bench on the nails of a long edge: 1730/90 = 19 of them.
    assertEquals(1.35 * result.massKg() * 9.81 / 2 / 19, partial.demand().value(), 0.5);
    assertEquals("1.35 permanent", partial.combination());
    assertEquals("permanent", allowable.combination());
  }

  private static BenchSketch nailed(double spacing) {
    return Benches.ordinary()
        .top(t -> t.lipping(l -> l.nailed(true).nailDiameter(mm(2)).nailSpacing(mm(spacing))));
  }

  private static List<CheckResult.Checked> nails(double spacing) {
    return List.of(checked(of(nailed(spacing)), "lipping-nail-yielding-across"));
  }

  @Test
  void a_rail_left_proud_shortens_the_leg_and_the_wood_above_its_mortise() {
    BenchSketch proud = Benches.ordinary().everyEndFrame(f -> f.topRail(r -> r.proud(mm(4))));
    assertTrue(of(proud).massKg() < of(Benches.ordinary()).massKg());
  }

  private static BenchSketch layered(LayerHold hold, double... thicknesses) {
    BenchSketch sketch =
        BenchSketch.named("layers")
            .height(mm(845))
            .wood("beech-european")
            .top(t -> t.length(mm(1730)).width(mm(640)).hold(hold))
            .endFrame(f -> f.at(mm(270)))
            .endFrame(f -> f.at(mm(1490)));
    for (double thickness : thicknesses) {
      sketch.top(t -> t.layer(l -> l.thickness(mm(thickness))));
    }
    return sketch;
  }

  @Test
  void the_line_between_two_layers_meets_the_greatest_shear_and_those_of_three_a_little_less() {
    LayerHold glued = new LayerHold.Glued();
    CheckResult.Checked two = checked(of(layered(glued, 27, 27)), "glue-line-layers-along");
    CheckResult.Checked three = checked(of(layered(glued, 18, 18, 18)), "glue-line-layers-along");
    assertEquals(8.0 / 9, three.demand().value() / two.demand().value(), 1e-9);
    assertTrue(two.utilisation() > 0 && two.utilisation() < 0.5, two.toString());
    assertFalse(find(of(layered(new LayerHold.Loose(), 27, 27)), two.key()).isPresent());
  }

  @Test
  void a_layer_whose_grain_crosses_the_force_rolls_before_it_shears() {
    BenchSketch crossed =
        layered(new LayerHold.Glued(), 25)
            .top(t -> t.layer(l -> l.thickness(mm(9)).grain(Grain.ACROSS)))
            .top(t -> t.layer(l -> l.thickness(mm(22))));
    String key = "glue-line-layers-along";
    double rolling = checked(of(crossed), key).capacity().value();
    double shearing = checked(of(layered(new LayerHold.Glued(), 27, 29)), key).capacity().value();
    assertTrue(rolling < 0.6 * shearing, rolling + " " + shearing);
  }

  @Test
  void edge_joints_are_as_strong_as_the_wood_across_its_grain_and_a_thicker_top_spares_them() {
    CheckResult.Checked thin = checked(of(Benches.ordinary()), "glue-line-edges");
    CheckResult.Checked thick =
        checked(of(Benches.ordinary().top(t -> t.thickness(mm(79)))), "glue-line-edges");
    assertTrue(thick.utilisation() < thin.utilisation());
    double wood = checked(of(Benches.ordinary()), "bending-top-across").utilisation();
    assertTrue(thin.utilisation() <= wood * 1.001 && thin.utilisation() > 0.5 * wood);
  }

  @Test
  void edge_joints_of_a_top_that_is_let_split_are_left_out_by_name() {
    BenchSketch thin = Benches.ordinary().top(t -> t.thickness(mm(34)));
    assertTrue(find(of(thin), "bending-top-split").isPresent());
    CheckResult edges = find(of(thin), "glue-line-edges").orElseThrow();
    assertEquals(Verdict.NOT_CHECKED, edges.verdict());
  }

  @Test
  void screws_between_layers_carry_less_where_they_stand_closer_and_not_too_close() {
    String key = "layer-screws-along-screw-yielding-across";
    double sparse = checked(of(screwed(5, 230)), key).demand().value();
    double dense = checked(of(screwed(5, 90)), key).demand().value();
    assertTrue(dense < sparse, dense + " " + sparse);
    CheckResult.Checked spacing =
        checked(of(screwed(5, 21)), "layer-screws-along-spacing-of-screws-along-the-grain");
    assertEquals(Verdict.INADEQUATE, spacing.verdict());
    assertEquals(21, spacing.capacity().value(), 1e-9);
  }

  private static BenchSketch screwed(double diameter, double spacing) {
    return layered(new LayerHold.Screwed(mm(diameter), mm(spacing), 4), 27, 35);
  }

  private static BenchSketch spined(double thickness, LayerHold hold) {
    return Benches.ordinary()
        .stretcher(
            s ->
                s.line(StretcherLine.MIDDLE)
                    .name("spine")
                    .thickness(mm(thickness))
                    .depth(mm(95))
                    .topEdgeAt(mm(845 - 62))
                    .hold(hold));
  }

  @Test
  void a_spine_glued_to_the_top_is_checked_at_its_line_and_a_loose_one_is_not() {
    CheckResult.Checked slim =
        checked(of(spined(33, new LayerHold.Glued())), "glue-line-top-spine");
    CheckResult.Checked wide =
        checked(of(spined(66, new LayerHold.Glued())), "glue-line-top-spine");
    assertTrue(slim.demand().value() > wide.demand().value());
    assertTrue(wide.utilisation() > 0 && slim.utilisation() < 1, slim.toString());
    assertFalse(find(of(spined(33, new LayerHold.Loose())), "glue-line-top-spine").isPresent());
  }

  @Test
  void a_spine_screwed_to_the_top_is_checked_for_pull_shear_and_the_place_of_its_screws() {
    BenchResult near = of(spined(47, new LayerHold.Screwed(mm(5), mm(160), 2)));
    CheckResult.Checked edge =
        checked(near, "stretcher-screws-spine-screw-from-the-edge-of-the-stretcher");
    assertEquals(47 / 4.0, edge.capacity().value(), 1e-9);
    assertEquals(Verdict.INADEQUATE, edge.verdict());
    String across = "stretcher-screws-spine-screw-yielding-across";
    BenchResult far = of(spined(47, new LayerHold.Screwed(mm(5), mm(160), 1)));
    assertTrue(checked(far, across).utilisation() > 0);
    assertTrue(
        find(far, "stretcher-screws-spine-screw-from-the-edge-of-the-stretcher")
            .map(c -> ((CheckResult.Checked) c).utilisation() < 1)
            .orElseThrow());
  }

  private static CheckResult.Checked vise(Edge edge, double newtons) {
    BenchSketch sketch =
        Benches.ordinary()
            .vise(v -> v.name("big vise").edge(edge).clampForce(Force.ofNewtons(newtons)));
    return checked(of(sketch), "vise-edge-big-vise");
  }

  @Test
  void a_jaw_presses_the_edge_by_its_force_and_long_edges_are_softer_than_ends() {
    CheckResult.Checked front = vise(Edge.FRONT, 4300);
    double expected = 4300 / (150.0 * 62);
    assertEquals(expected, front.demand().value(), 1e-9);
    assertEquals(2 * front.utilisation(), vise(Edge.BACK, 8600).utilisation(), 1e-9);
    assertTrue(vise(Edge.LEFT, 4300).capacity().value() > 2 * front.capacity().value());
  }

  @Test
  void screws_that_nobody_named_are_as_thick_as_the_edges_of_the_rails_allow() {
    double[][] cases = {{52, 8}, {44, 6}, {38, 5}, {33, 4.5}, {24, 3}};
    for (double[] rail : cases) {
      BenchSketch sketch =
          Benches.ordinary()
              .top(t -> t.thickness(mm(74)))
              .everyEndFrame(f -> f.topRail(r -> r.thickness(mm(rail[0]))));
      TopFixing fixing = Benches.complete(sketch).top().fixing();
      assertEquals(rail[1], fixing.screwDiameter().mm());
      boolean coach = rail[1] >= 6;
      assertEquals(coach ? FixingScrew.COACH_SCREW : FixingScrew.WOOD_SCREW, fixing.screw());
      assertEquals((coach ? 6 : 7) * rail[1], fixing.threadLength().mm(), 1e-9);
      if (rail[0] > 30) {
        CheckResult.Checked edge =
            checked(of(sketch), "top-screws-screw-from-the-edge-of-the-rail");
        assertTrue(edge.utilisation() < 1, edge.toString());
      }
    }
  }
}
