package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

class SectionSweepTest {
  private static List<Response> responses(FrameModel model, String section) {
    List<Response> all = new ArrayList<>(SpringSweepTest.responses(model));
    all.removeIf(
        response ->
            response instanceof Response.Deflection d
                && model.members().get(d.member()).section().equals(section));
    return all;
  }

  private static CrossSection other(Random r, CrossSection s) {
    double[] by = new double[6];
    for (int i = 0; i < 6; i++) {
      by[i] = Math.pow(10, RandomFrames.between(r, -1, 1));
    }
    return new CrossSection(
        s.area() * by[0],
        s.iy() * by[1],
        s.iz() * by[2],
        s.j() * by[3],
        r.nextInt(5) == 0 ? 0 : 2000 * by[4],
        r.nextInt(5) == 0 ? 0 : 2000 * by[5]);
  }

  @Property(tries = 40)
  void another_section_answers_as_a_fresh_factorisation(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    String section = List.of("leg", "rail", "top").get(r.nextInt(3));
    List<LoadCase> cases =
        List.of(RandomFrames.loads(r, model, "one"), RandomFrames.loads(r, model, "two"));
    List<Response> responses = responses(model, section);
    SectionSweep sweep =
        SectionSweep.of(FrameSolver.prepare(model).prepared(), section, cases, responses);
    SectionSweep.Workspace w = sweep.workspace();
    for (int variant = 0; variant < 4; variant++) {
      CrossSection with = other(r, model.sections().get(section));
      assertEquals(SpringSweep.State.UPDATED, sweep.solve(with, w), "" + w.smallestPivot());
      PreparedFrame fresh = FrameSolver.prepare(model.withSection(section, with)).prepared();
      for (int c = 0; c < cases.size(); c++) {
        FrameResult result = fresh.solve(cases.get(c)).result();
        double[] size = SpringSweepTest.sizes(responses, result);
        for (int o = 0; o < responses.size(); o++) {
          Response response = responses.get(o);
          double expected = SpringSweepTest.direct(result, response);
          double allowed = 1e-9 * size[SpringSweepTest.kind(response)];
          assertEquals(expected, w.value(o, c), allowed, w.smallestPivot() + " " + response);
        }
      }
    }
  }

  @Property(tries = 10)
  void a_section_a_million_times_stiffer_or_softer_is_answered_afresh_or_rightly(
      @ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    LoadCase loads = RandomFrames.loads(r, model, "one");
    List<Response> responses = responses(model, "leg");
    SectionSweep sweep =
        SectionSweep.of(FrameSolver.prepare(model).prepared(), "leg", List.of(loads), responses);
    SectionSweep.Workspace w = sweep.workspace();
    CrossSection s = model.sections().get("leg");
    for (double f : new double[] {1e6, 1e-6}) {
      CrossSection with =
          new CrossSection(s.area() * f, s.iy() * f, s.iz() * f, s.j() * f, s.asy() * f, 0);
      SpringSweep.State state = sweep.solve(with, w);
      Preparation made = FrameSolver.prepare(model.withSection("leg", with));
      if (made instanceof Loose loose) {
        assertEquals(loose, w.loose());
        continue;
      }
      FrameResult result = ((PreparedFrame) made).solve(loads).result();
      double[] size = SpringSweepTest.sizes(responses, result);
      for (int o = 0; o < responses.size(); o++) {
        double expected = SpringSweepTest.direct(result, responses.get(o));
        double allowed = 1e-9 * size[SpringSweepTest.kind(responses.get(o))];
        assertEquals(expected, w.value(o, 0), allowed, state + " " + responses.get(o));
      }
    }
  }

  @Example
  void a_deflection_that_depends_on_the_section_is_refused() {
    FrameModel model = RandomFrames.frame(new Random(4));
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<Response> all = SpringSweepTest.responses(model);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> SectionSweep.of(frame, "rail", List.of(), all));
    assertTrue(refused.getMessage().contains("railA"), refused.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> SectionSweep.of(frame, "lath", List.of(), List.of()));
  }
}
