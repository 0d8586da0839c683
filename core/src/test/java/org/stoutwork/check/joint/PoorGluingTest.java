package org.stoutwork.check.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
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
