package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.linear.LdlLanes;

class StiffnessSweepTest {
  private static final double FOOT = 2100;

  private static FrameModel model(Random r) {
    FrameModel model = RandomFrames.frame(r);
    Map<String, Map<Direction, Restraint>> feet = new LinkedHashMap<>();
    for (String foot : List.of("A0", "B0", "C0", "D0")) {
      Map<Direction, Restraint> held = new EnumMap<>(Direction.class);
      for (Direction d : List.of(Direction.UX, Direction.UY, Direction.UZ)) {
        held.put(d, Restraint.elastic(FOOT + 100 * d.index()));
      }
      feet.put(foot, held);
    }
    return model.withSupports(feet);
  }

  private static List<Response> responses(FrameModel model) {
    List<Response> all = new ArrayList<>(SpringSweepTest.responses(model));
    all.removeIf(response -> response instanceof Response.Deflection);
    return all;
  }

  /** The same variant as a model of its own: one material a member, other foot springs. */
  private static FrameModel variant(FrameModel model, List<String> parts, double[] f) {
    Map<String, Member> members = new LinkedHashMap<>();
    Map<String, Material> materials = new LinkedHashMap<>(model.materials());
    Map<String, Map<Direction, Restraint>> feet = new LinkedHashMap<>();
    for (int p = 0; p < f.length; p++) {
      String part = parts.get(p);
      Member m = model.members().get(part);
      if (m != null) {
        Material old = model.materialOf(m);
        materials.put(part, new Material(old.e() * f[p], old.g() * f[p], old.density()));
        members.put(
            part,
            new Member(
                part,
                m.from(),
                m.to(),
                m.section(),
                part,
                m.roll(),
                scaled(m.start(), f[p]),
                scaled(m.end(), f[p])));
      } else {
        Map<Direction, Restraint> held =
            feet.computeIfAbsent(part, n -> new EnumMap<>(Direction.class));
        Direction d = Direction.of(held.size());
        held.put(d, Restraint.elastic(f[p] * (FOOT + 100 * d.index())));
      }
    }
    return new FrameModel(
        model.nodes(), materials, model.sections(), members, feet, model.ties(), model.masses());
  }

  private static MemberEnd scaled(MemberEnd end, double f) {
    MemberEnd scaled = end;
    for (Direction d : Direction.values()) {
      if (end.in(d) instanceof org.stoutwork.analysis.model.EndCondition.Elastic spring) {
        scaled = scaled.spring(d, f * spring.stiffness());
      }
    }
    return scaled;
  }

  @Property(tries = 15)
  void each_lane_is_what_a_fresh_factorisation_gives(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = model(r);
    List<LoadCase> cases =
        List.of(RandomFrames.loads(r, model, "one"), RandomFrames.loads(r, model, "two"));
    List<Response> responses = responses(model);
    StiffnessSweep sweep =
        StiffnessSweep.of(FrameSolver.prepare(model).prepared(), cases, responses);
    StiffnessSweep.Workspace w = sweep.workspace();
    List<String> parts = sweep.parts();
    double[][] factors = new double[LdlLanes.WIDTH][parts.size()];
    for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
      for (int p = 0; p < parts.size(); p++) {
        factors[lane][p] = Math.pow(10, RandomFrames.between(r, -0.6, 0.6));
        w.factor(p, lane, factors[lane][p]);
      }
    }
    sweep.solve(w);
    for (int lane : new int[] {0, 17, 63}) {
      assertNull(sweep.loose(w, lane));
      PreparedFrame fresh = FrameSolver.prepare(variant(model, parts, factors[lane])).prepared();
      for (int c = 0; c < cases.size(); c++) {
        FrameResult result = fresh.solve(cases.get(c)).result();
        double[] size = SpringSweepTest.sizes(responses, result);
        for (int o = 0; o < responses.size(); o++) {
          double expected = SpringSweepTest.direct(result, responses.get(o));
          double allowed = 1e-9 * size[SpringSweepTest.kind(responses.get(o))];
          assertEquals(expected, w.value(o, c, lane), allowed, responses.get(o) + "");
        }
      }
    }
  }

  @Example
  void a_variant_gives_the_same_bits_in_any_lane_and_company() {
    FrameModel model = model(new Random(11));
    List<LoadCase> cases = List.of(RandomFrames.loads(new Random(3), model, "one"));
    StiffnessSweep sweep =
        StiffnessSweep.of(FrameSolver.prepare(model).prepared(), cases, responses(model));
    StiffnessSweep.Workspace alone = sweep.workspace();
    StiffnessSweep.Workspace among = sweep.workspace();
    Random r = new Random(5);
    for (int p = 0; p < sweep.parts().size(); p++) {
      double f = 0.5 + r.nextDouble();
      alone.factor(p, 4, f);
      for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
        among.factor(p, lane, lane == 61 ? f : 0.2 + r.nextDouble());
      }
    }
    sweep.solve(alone);
    sweep.solve(among);
    for (int o = 0; o < responses(model).size(); o++) {
      assertEquals(alone.value(o, 0, 4), among.value(o, 0, 61));
    }
  }

  @Example
  void a_variant_that_falls_down_is_named_and_spares_the_others() {
    FrameModel model = model(new Random(11));
    List<LoadCase> cases = List.of(RandomFrames.loads(new Random(3), model, "one"));
    StiffnessSweep sweep =
        StiffnessSweep.of(FrameSolver.prepare(model).prepared(), cases, responses(model));
    StiffnessSweep.Workspace w = sweep.workspace();
    sweep.solve(w);
    double sound = w.value(0, 0, 8);
    for (int p = 0; p < sweep.parts().size(); p++) {
      if (model.nodes().containsKey(sweep.parts().get(p))) {
        w.factor(p, 7, 0);
      }
    }
    sweep.solve(w);
    assertNotNull(sweep.loose(w, 7));
    assertNull(sweep.loose(w, 8));
    assertEquals(sound, w.value(0, 0, 8));
  }

  @Example
  void what_lanes_cannot_read_is_refused() {
    FrameModel model = RandomFrames.frame(new Random(4));
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<Response> deflection = List.of(new Response.Deflection("topA", 300, Direction.UZ));
    assertThrows(
        IllegalArgumentException.class, () -> StiffnessSweep.of(frame, List.of(), deflection));
    List<Response> nowhere = List.of(new Response.Displacement("Z9", Direction.UZ));
    assertThrows(
        IllegalArgumentException.class, () -> StiffnessSweep.of(frame, List.of(), nowhere));
  }
}
