package org.stoutwork.check.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Samples;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;

/** Glue on woods that bond with difficulty. */
class PoorGluingTest {

  private static BenchSketch of(String wood) {
    return Benches.ordinary().wood(wood);
  }

  private static Inquiry inquiry(BenchSketch sketch) {
    return new Inquiry(Benches.complete(sketch), Benches.TABLES);
  }

  @Test
  void a_line_on_such_wood_counts_three_quarters() {
    // 0.75 · 1.64 MPa.
    assertEquals(1.23, GlueDesign.poor(Pad.blank(), 1.64), 1e-12);
    JointStrengths strengths = new JointStrengths(inquiry(of("teak")));
    JointStrength teak = strengths.of("teak", "teak", DurationClass.SHORT);
    assertTrue(teak.gluesPoorly());
    JointStrength usual = Samples.strength(Samples.PARTIAL);
    JointStrength poor =
        new JointStrength(usual.rail(), usual.post(), usual.family(), usual.lasting(), true);
    assertEquals(0.75, withdrawal(poor) / withdrawal(usual), 1e-12);
  }

  private static double withdrawal(JointStrength strength) {
    return JointCapacities.utilisations(
            Samples.tenon(new Fit.Glued()),
            Samples.setting(),
            strength,
            new JointForces(500, 0, 0, 0, 0, 0),
            false)
        .stream()
        .filter(limit -> limit.failure().equals("withdrawal of the glued cheeks"))
        .findFirst()
        .orElseThrow()
        .capacity();
  }

  @Test
  void the_bench_is_cautioned_by_the_name_of_the_wood() throws Exception {
    BenchResult teak = BenchCheck.load().withoutPlate().run(of("teak"));
    List<String> said =
        teak.cautions().stream()
            .filter(c -> c.code().equals("C-26"))
            .map(c -> c.message())
            .toList();
    assertEquals(1, said.size());
    assertTrue(said.get(0).startsWith("Teak: wood that glues poorly."), said.get(0));
    BenchResult beech = BenchCheck.load().withoutPlate().run(of("beech-european"));
    assertTrue(beech.cautions().stream().noneMatch(c -> c.code().equals("C-26")));
  }

  private static CheckResult.Checked line(BenchSketch sketch, String key) {
    return BenchCheck.load().withoutPlate().run(Benches.complete(sketch)).checks().stream()
        .filter(c -> c.key().equals(key))
        .map(CheckResult.Checked.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static BenchSketch layered(String lower, String upper) {
    return BenchSketch.named("layers")
        .height(mm(845))
        .wood("beech-european")
        .top(t -> t.length(mm(1730)).width(mm(640)).hold(new LayerHold.Glued()))
        .endFrame(f -> f.at(mm(270)))
        .endFrame(f -> f.at(mm(1490)))
        .top(t -> t.layer(l -> l.wood(lower).thickness(mm(31))))
        .top(t -> t.layer(l -> l.wood(upper).thickness(mm(24))));
  }

  @Test
  void a_line_between_two_woods_holds_what_the_weaker_holds_less_where_either_bonds_badly() {
    String key = "glue-line-layers-along";
    double beech = strength(layered("beech-european", "beech-european"), key);
    double teak = strength(layered("teak", "teak"), key) / 0.75;
    double mixed = strength(layered("beech-european", "teak"), key);
    // The beech shears first, and teak bonds with difficulty.
    assertTrue(beech < 0.9 * teak, beech + " of " + teak);
    assertEquals(0.75 * beech, mixed, 1e-9);
    assertEquals(mixed, strength(layered("teak", "beech-european"), key), 1e-9);
  }

  @Test
  void a_stretcher_glued_under_the_top_counts_with_its_own_wood() {
    String key = "glue-line-top-spine";
    double beech = strength(spined("beech-european", "beech-european"), key);
    assertEquals(0.75 * beech, strength(spined("beech-european", "teak"), key), 1e-9);
    double spruce = strength(spined("spruce-black", "spruce-black"), key);
    assertTrue(spruce < 0.9 * beech, spruce + " of " + beech);
    assertEquals(spruce, strength(spined("beech-european", "spruce-black"), key), 1e-9);
  }

  private static BenchSketch spined(String top, String spine) {
    return Benches.ordinary()
        .top(t -> t.wood(top))
        .stretcher(
            s ->
                s.line(StretcherLine.MIDDLE)
                    .name("spine")
                    .wood(spine)
                    .thickness(mm(43))
                    .depth(mm(95))
                    .topEdgeAt(mm(845 - 62))
                    .hold(new LayerHold.Glued()));
  }

  private static double strength(BenchSketch sketch, String key) {
    return line(sketch, key).capacity().value();
  }

  @Test
  void a_wood_that_no_glue_touches_is_not_named() {
    BenchSketch dryTop =
        Benches.ordinary()
            .top(t -> t.wood("teak").width(mm(290)))
            .everyEndFrame(f -> f.legs(l -> l.frontInset(mm(5)).backInset(mm(5))));
    assertEquals(List.of(), GlueClimate.woodsThatGluePoorly(inquiry(dryTop)));
    assertTrue(GlueClimate.check(inquiry(dryTop)).isPresent());
    BenchSketch boards = Benches.ordinary().top(t -> t.wood("teak"));
    assertEquals(List.of("Teak"), GlueClimate.woodsThatGluePoorly(inquiry(boards)));
    BenchSketch rails = Benches.ordinary().everyEndFrame(f -> f.bottomRail(r -> r.wood("teak")));
    assertEquals(List.of("Teak"), GlueClimate.woodsThatGluePoorly(inquiry(rails)));
  }

  @Test
  void without_glue_nothing_is_said() {
    BenchSketch dry =
        of("teak")
            .top(t -> t.width(mm(290)))
            .everyEndFrame(
                f ->
                    f.legs(l -> l.frontInset(mm(5)).backInset(mm(5)))
                        .topRail(r -> r.joint(j -> j.hold(JointHold.PEGGED)))
                        .bottomRail(r -> r.joint(j -> j.hold(JointHold.PEGGED))));
    assertEquals(List.of(), GlueClimate.woodsThatGluePoorly(inquiry(dry)));
    assertEquals(List.of("Teak"), GlueClimate.woodsThatGluePoorly(inquiry(of("teak"))));
  }
}
