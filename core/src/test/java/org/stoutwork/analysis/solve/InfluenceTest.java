package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.MemberResult.Force;

class InfluenceTest {
  private static double direct(FrameResult result, Response response) {
    if (response instanceof Response.Displacement d) {
      return result.displacement(d.node())[d.direction().index()];
    } else if (response instanceof Response.Reaction d) {
      return result.reaction(d.node())[d.direction().index()];
    } else if (response instanceof Response.Internal in) {
      return result.member(in.member()).along(in.force()).at(in.at());
    }
    Response.Deflection d = (Response.Deflection) response;
    return result.member(d.member()).deflectionAt(d.at())[d.direction().index()];
  }

  private static List<Response> responses(Random r) {
    List<Response> all = new ArrayList<>();
    all.add(new Response.Displacement("B2", Direction.UY));
    all.add(new Response.Displacement("C1", Direction.RZ));
    all.add(new Response.Reaction("A0", Direction.UX));
    all.add(new Response.Reaction("B0", Direction.UY));
    all.add(new Response.Reaction("C0", Direction.UZ));
    for (Force force : Force.values()) {
      all.add(new Response.Internal("topA", 100 + 900 * r.nextDouble(), force));
    }
    all.add(new Response.Deflection("topA", 500, Direction.UZ));
    all.add(new Response.Deflection("railB", 210, Direction.RY));
    return all;
  }

  @Property(tries = 30)
  void one_influence_says_what_any_load_does(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase loads = RandomFrames.loads(r, model, "all");
    for (Response response : responses(r)) {
      Influence influence = frame.influence(response);
      for (Load load : loads.loads()) {
        FrameResult result = frame.solve(LoadCase.of("one", load)).result();
        double expected = direct(result, response);
        double size = 1e-8 * (Math.abs(expected) + scale(response));
        assertEquals(expected, influence.of(load), size, () -> response + " " + load);
      }
    }
  }

  private static double scale(Response response) {
    if (response instanceof Response.Displacement d) {
      return d.direction().isRotation() ? 0.01 : 1;
    } else if (response instanceof Response.Deflection d) {
      return d.direction().isRotation() ? 0.01 : 1;
    }
    return response instanceof Response.Reaction ? 500 : 5e4;
  }

  @Property(tries = 30)
  void with_feet_lifted_it_follows_the_state_of_the_result(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase loads = RandomFrames.loads(r, model, "all");
    if (!(frame.solve(loads) instanceof FrameResult result)) {
      return;
    }
    for (Response response : responses(r)) {
      Influence influence = frame.influence(response, result);
      double sum = 0;
      for (Load load : loads.loads()) {
        sum += influence.of(load);
      }
      double expected = direct(result, response);
      assertEquals(expected, sum, 1e-6 * (Math.abs(expected) + scale(response)), response + "");
    }
  }

  @Example
  void a_reaction_where_nothing_holds_is_refused() {
    FrameModel model = RandomFrames.frame(new Random(4));
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    assertThrows(
        IllegalArgumentException.class,
        () -> frame.influence(new Response.Reaction("B2", Direction.UX)));
  }

  @Property(tries = 20)
  void a_frame_with_other_joints_answers_as_one_made_afresh(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, true);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase loads =
        LoadCase.of("down", Load.node("A2", 20, 30, -500), Load.line("topC", 0, 0, -1));
    MemberEnd joint = MemberEnd.RIGID.spring(Direction.RY, 3e7).spring(Direction.UX, 9e3);
    PreparedFrame changed = frame.withSprings("topC", joint, MemberEnd.RIGID).prepared();
    same(FrameSolver.prepare(changed.model()).prepared(), changed, loads);
    CrossSection section = model.sections().get("leg");
    CrossSection weaker =
        new CrossSection(
            section.area() / 2,
            section.iy() / 3,
            section.iz() / 4,
            section.j() / 3,
            section.asy() / 2,
            section.asz() / 2);
    PreparedFrame thin = frame.withSection("leg", weaker).prepared();
    same(FrameSolver.prepare(thin.model()).prepared(), thin, loads);
  }

  private static void same(PreparedFrame fresh, PreparedFrame changed, LoadCase loads) {
    FrameResult a = fresh.solve(loads).result();
    FrameResult b = changed.solve(loads).result();
    for (String node : fresh.model().nodes().keySet()) {
      for (int i = 0; i < 6; i++) {
        double u = a.displacement(node)[i];
        assertEquals(u, b.displacement(node)[i], 1e-10 * (1 + Math.abs(u)));
      }
    }
  }

  @Example
  void members_may_not_come_or_go_when_joints_change() {
    PreparedFrame frame = FrameSolver.prepare(RandomFrames.frame(new Random(4))).prepared();
    Map<String, org.stoutwork.analysis.model.Member> fewer =
        new LinkedHashMap<>(frame.model().members());
    fewer.remove("topA");
    assertThrows(IllegalArgumentException.class, () -> frame.withMembers(fewer));
    Vec3 force = new Vec3(0, 0, -1);
    assertThrows(
        IllegalArgumentException.class,
        () ->
            frame
                .influence(new Response.Displacement("A2", Direction.UZ))
                .onMember("topA", 99999, force));
  }
}
