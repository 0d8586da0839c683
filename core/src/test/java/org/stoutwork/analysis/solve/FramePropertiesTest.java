package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/** What must hold for every frame, whatever its shape. */
class FramePropertiesTest {
  private static FrameResult solve(FrameModel model, LoadCase loads) {
    return FrameSolver.prepare(model).prepared().solve(loads).result();
  }

  @Property(tries = 60)
  void loads_and_reactions_balance(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    FrameResult result = solve(model, RandomFrames.loads(r, model, "all"));
    assertTrue(result.equilibriumError() < 1e-10, () -> "left over " + result.equilibriumError());
    assertTrue(result.residual() < 1e-10);
    assertTrue(
        result.reciprocityError() < 1e-10, () -> "works differ " + result.reciprocityError());
  }

  @Property(tries = 30)
  void the_work_of_each_load_case_on_the_motion_of_another_is_the_same_both_ways(
      @ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase first = pointLoads(r, model);
    LoadCase second = pointLoads(r, model);
    double one = work(first, frame.solve(second).result());
    double other = work(second, frame.solve(first).result());
    assertEquals(one, other, 1e-9 * scale(frame, first, second));
  }

  private static double scale(PreparedFrame frame, LoadCase a, LoadCase b) {
    return Math.sqrt(work(a, frame.solve(a).result()) * work(b, frame.solve(b).result()));
  }

  private static LoadCase pointLoads(Random r, FrameModel model) {
    double l = RandomFrames.length(model, "topB");
    return LoadCase.of(
        "points",
        new Load.OnNode("A2", RandomFrames.vector(r, 300), RandomFrames.vector(r, 30000)),
        new Load.OnNode("C1", RandomFrames.vector(r, 300), RandomFrames.vector(r, 30000)),
        new Load.OnMemberPoint(
            "topB",
            l * r.nextDouble(),
            RandomFrames.vector(r, 300),
            RandomFrames.vector(r, 30000),
            Load.Axes.LOCAL));
  }

  private static double work(LoadCase loads, FrameResult result) {
    double sum = 0;
    for (Load load : loads.loads()) {
      double[] u;
      Vec3 f;
      Vec3 m;
      if (load instanceof Load.OnNode on) {
        u = result.displacement(on.node());
        f = on.force();
        m = on.moment();
      } else {
        Load.OnMemberPoint on = (Load.OnMemberPoint) load;
        u = result.member(on.member()).deflectionAt(on.at());
        f = on.force();
        m = on.moment();
      }
      sum += f.dot(Vec3.of(u, 0)) + m.dot(Vec3.of(u, 3));
    }
    return sum;
  }

  @Property(tries = 30)
  void effects_of_combined_cases_add_up(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    LoadCase a = RandomFrames.loads(r, model, "a");
    LoadCase b = RandomFrames.loads(r, model, "b");
    FrameResult both = frame.solve(Combination.named("both").plus(1.35, a).plus(-0.7, b)).result();
    FrameResult onlyA = frame.solve(a).result();
    FrameResult onlyB = frame.solve(b).result();
    double[] sum = both.member("topA").internalAt(333);
    double[] x = onlyA.member("topA").internalAt(333);
    double[] y = onlyB.member("topA").internalAt(333);
    for (int i = 0; i < 6; i++) {
      double size = Math.abs(x[i]) + Math.abs(y[i]) + (i < 3 ? 1 : 1000);
      assertEquals(1.35 * x[i] - 0.7 * y[i], sum[i], 1e-9 * size);
    }
  }

  @Property(tries = 30)
  void a_turned_frame_turns_its_answer(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = onAllRoundSprings(RandomFrames.frame(r));
    LoadCase loads = localLoads(r, model);
    double turn = RandomFrames.between(r, 0.3, 2.5);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    FrameModel turned =
        mapped(model, v -> new Vec3(c * v.x() - s * v.y(), s * v.x() + c * v.y(), v.z()));
    FrameResult before = solve(model, loads);
    FrameResult after = solve(turned, loads);
    for (String member : model.members().keySet()) {
      // Local axes turn with the frame about the vertical, vertical members excepted.
      double[] f = before.member(member).end();
      double[] g = after.member(member).end();
      for (int i = 0; i < 6; i++) {
        assertEquals(f[i], g[i], 1e-7 * (i < 3 ? 1000 : 1e6), member);
      }
    }
    Vec3 u = Vec3.of(before.displacement("B2"), 0);
    Vec3 v = Vec3.of(after.displacement("B2"), 0);
    assertEquals(c * u.x() - s * u.y(), v.x(), 1e-8 * (1 + u.length()));
    assertEquals(s * u.x() + c * u.y(), v.y(), 1e-8 * (1 + u.length()));
    assertEquals(u.z(), v.z(), 1e-8 * (1 + u.length()));
  }

  @Property(tries = 30)
  void a_mirrored_frame_mirrors_its_answer(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = onAllRoundSprings(RandomFrames.frame(r));
    FrameModel mirrored = mirrored(model);
    Vec3 f = RandomFrames.vector(r, 400);
    Vec3 m = RandomFrames.vector(r, 40000);
    FrameResult before = solve(model, LoadCase.of("one", new Load.OnNode("C2", f, m)));
    // A mirror in y turns round the y part of a force and the x and z parts of a moment.
    Load load =
        new Load.OnNode("C2", new Vec3(f.x(), -f.y(), f.z()), new Vec3(-m.x(), m.y(), -m.z()));
    FrameResult after = solve(mirrored, LoadCase.of("mirrored", load));
    double[] sign = {1, -1, 1, -1, 1, -1};
    for (String node : model.nodes().keySet()) {
      double[] u = before.displacement(node);
      double[] v = after.displacement(node);
      for (int i = 0; i < 6; i++) {
        assertEquals(sign[i] * u[i], v[i], 1e-8 * (i < 3 ? 1 + Math.abs(u[i]) : 0.01), node);
      }
    }
  }

  @Property(tries = 30)
  void other_units_give_the_same_structure(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = onAllRoundSprings(RandomFrames.frame(r));
    Vec3 f = RandomFrames.vector(r, 400);
    FrameResult mm = solve(model, LoadCase.of("mm", new Load.OnNode("C2", f, Vec3.ZERO)));
    FrameResult cm =
        solve(inCentimetres(model), LoadCase.of("cm", new Load.OnNode("C2", f, Vec3.ZERO)));
    double[] u = mm.displacement("A2");
    double[] v = cm.displacement("A2");
    for (int i = 0; i < 6; i++) {
      assertEquals(u[i], i < 3 ? 10 * v[i] : v[i], 1e-8 * (i < 3 ? 1 + Math.abs(u[i]) : 0.01));
    }
    double[] p = mm.member("railC").start();
    double[] q = cm.member("railC").start();
    for (int i = 0; i < 6; i++) {
      assertEquals(p[i], i < 3 ? q[i] : 10 * q[i], 1e-7 * (i < 3 ? 400 : 4e5));
    }
  }

  @Property(tries = 30)
  void splitting_a_member_changes_nothing(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    double l = RandomFrames.length(model, "topA");
    double cut = l * RandomFrames.between(r, 0.2, 0.8);
    Vec3 q = RandomFrames.vector(r, 1.5);
    Load whole = new Load.OnMemberLine("topA", 0, l, q, q.times(-0.4), Load.Axes.GLOBAL);
    FrameResult before = solve(model, LoadCase.of("whole", whole));
    Vec3 middle = q.times(1 - 1.4 * cut / l);
    LoadCase halves =
        LoadCase.of(
            "halves",
            new Load.OnMemberLine("topA.1", 0, cut, q, middle, Load.Axes.GLOBAL),
            new Load.OnMemberLine("topA.2", 0, l - cut, middle, q.times(-0.4), Load.Axes.GLOBAL));
    FrameResult after = solve(split(model, "topA", cut / l), halves);
    for (String node : model.nodes().keySet()) {
      double[] u = before.displacement(node);
      double[] v = after.displacement(node);
      for (int i = 0; i < 6; i++) {
        assertEquals(u[i], v[i], 1e-9 * (i < 3 ? 1 + Math.abs(u[i]) : 0.01), node);
      }
    }
    double[] inside = before.member("topA").internalAt(cut);
    double[] atCut = after.member("topA.1").end();
    double[] moved = before.member("topA").globalDeflectionAt(cut);
    double[] node = after.displacement("topA@1");
    for (int i = 0; i < 6; i++) {
      assertEquals(inside[i], atCut[i], 1e-8 * (i < 3 ? 1000 : 1e6));
      assertEquals(moved[i], node[i], 1e-9 * (i < 3 ? 1 + Math.abs(moved[i]) : 0.01));
    }
  }

  @Property(tries = 30)
  void a_stiffer_frame_yields_less_work(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    LoadCase loads = pointLoads(r, model);
    CrossSection s = model.sections().get("rail");
    FrameModel stiffer =
        model.withSection(
            "rail",
            new CrossSection(
                1.3 * s.area(), 1.1 * s.iy(), 2 * s.iz(), 1.5 * s.j(), s.asy(), 1.2 * s.asz()));
    double soft = work(loads, solve(model, loads));
    double hard = work(loads, solve(stiffer, loads));
    assertTrue(hard <= soft * (1 + 1e-10), hard + " above " + soft);
    assertTrue(hard > 0);
  }

  @Property(tries = 30)
  void a_free_body_cut_off_anywhere_balances(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    LoadCase loads = RandomFrames.loads(r, model, "all");
    FrameResult result = solve(model, loads);
    MemberResult member = result.member("topA");
    double x = member.length() * r.nextDouble();
    double[] s = member.start();
    double[] inside = member.internalAt(x);
    Load.OnMemberPoint point = null;
    Load.OnMemberLine line = null;
    for (Load load : loads.loads()) {
      if (load instanceof Load.OnMemberPoint p && p.member().equals("topA")) {
        point = p;
      } else if (load instanceof Load.OnMemberLine q && q.member().equals("topA")) {
        line = q;
      }
    }
    Vec3 force = Vec3.of(s, 0).plus(Vec3.of(inside, 0));
    Vec3 moment = Vec3.of(s, 3).plus(Vec3.of(inside, 3)).plus(arm(x).cross(Vec3.of(inside, 0)));
    FrameSolver.Layout layout = new FrameSolver.Layout(model);
    var axes = layout.beams.get("topA").axes();
    boolean local = point.axes() == Load.Axes.LOCAL;
    if (point.at() < x) {
      Vec3 f = local ? point.force() : axes.toLocal(point.force());
      force = force.plus(f);
      moment = moment.plus(arm(point.at()).cross(f));
      moment = moment.plus(local ? point.moment() : axes.toLocal(point.moment()));
    }
    Vec3 weight = ((Load.SelfWeight) loads.loads().get(loads.loads().size() - 1)).direction();
    Material wood = model.materials().get("wood");
    double area = model.sections().get("top").area();
    Vec3 dead = axes.toLocal(weight.times(wood.density() * 1e-9 * 9.80665 * area));
    // Midpoint sums of the line loads: an independent quadrature.
    int n = 4000;
    for (int k = 0; k < n; k++) {
      double at = x * (k + 0.5) / n;
      Vec3 q = dead;
      force = force.plus(q.times(x / n));
      moment = moment.plus(arm(at).cross(q).times(x / n));
    }
    double b = Math.min(line.to(), x);
    for (int k = 0; k < n && b > line.from(); k++) {
      double at = line.from() + (b - line.from()) * (k + 0.5) / n;
      double t = (at - line.from()) / (line.to() - line.from());
      Vec3 q = line.start().plus(line.end().minus(line.start()).times(t));
      q = (local ? q : axes.toLocal(q)).times((b - line.from()) / n);
      force = force.plus(q);
      moment = moment.plus(arm(at).cross(q));
    }
    assertEquals(0, force.length(), 1e-4);
    assertEquals(0, moment.length(), 0.5);
  }

  private static Vec3 arm(double x) {
    return new Vec3(x, 0, 0);
  }

  // ---- changed models ----------------------------------------------------------------------

  private interface Map3 {
    Vec3 of(Vec3 v);
  }

  /** Springs alike in all directions, so that turning a frame does not turn its supports. */
  private static FrameModel onAllRoundSprings(FrameModel model) {
    Map<String, Map<Direction, Restraint>> supports = new LinkedHashMap<>();
    for (String foot : List.of("A0", "B0", "C0", "D0")) {
      double k = 800 + 300 * supports.size();
      supports.put(
          foot,
          Map.of(
              Direction.UX, Restraint.elastic(k),
              Direction.UY, Restraint.elastic(k),
              Direction.UZ, Restraint.elastic(k)));
    }
    return new FrameModel(
        model.nodes(),
        model.materials(),
        model.sections(),
        model.members(),
        supports,
        model.ties(),
        model.masses());
  }

  private static LoadCase localLoads(Random r, FrameModel model) {
    double l = RandomFrames.length(model, "topB");
    return LoadCase.of(
        "local",
        new Load.OnMemberPoint(
            "topB",
            0.3 * l,
            RandomFrames.vector(r, 400),
            RandomFrames.vector(r, 4e4),
            Load.Axes.LOCAL),
        new Load.OnMemberLine(
            "railA",
            20,
            700,
            RandomFrames.vector(r, 1),
            RandomFrames.vector(r, 1),
            Load.Axes.LOCAL));
  }

  private static FrameModel mapped(FrameModel model, Map3 map) {
    Map<String, Vec3> nodes = new LinkedHashMap<>();
    model.nodes().forEach((n, at) -> nodes.put(n, map.of(at)));
    Map<String, Member> members = new LinkedHashMap<>();
    model
        .members()
        .forEach(
            (n, m) ->
                members.put(
                    n,
                    changed(
                        m,
                        m.roll(),
                        m.start().offset(map.of(m.start().offset())),
                        m.end().offset(map.of(m.end().offset())))));
    return new FrameModel(
        nodes,
        model.materials(),
        model.sections(),
        members,
        model.supports(),
        model.ties(),
        model.masses());
  }

  private static Member changed(Member m, double roll, MemberEnd start, MemberEnd end) {
    return new Member(m.name(), m.from(), m.to(), m.section(), m.material(), roll, start, end);
  }

  private static FrameModel mirrored(FrameModel model) {
    Map3 mirror = v -> new Vec3(v.x(), -v.y(), v.z());
    FrameModel turned = mapped(model, mirror);
    Map<String, Member> members = new LinkedHashMap<>();
    // The mirror reverses the roll; the conditions are alike in both senses of each axis.
    turned.members().forEach((n, m) -> members.put(n, changed(m, -m.roll(), m.start(), m.end())));
    return turned.withMembers(members);
  }

  private static FrameModel inCentimetres(FrameModel model) {
    FrameModelBuilder b = FrameModel.builder();
    model.nodes().forEach((n, at) -> b.node(n, at.times(0.1)));
    model
        .materials()
        .forEach((n, m) -> b.material(n, 100 * m.e(), 100 * m.g(), 1000 * m.density()));
    model
        .sections()
        .forEach(
            (n, s) ->
                b.section(
                    n,
                    new CrossSection(
                        s.area() / 100,
                        s.iy() / 1e4,
                        s.iz() / 1e4,
                        s.j() / 1e4,
                        s.asy() / 100,
                        s.asz() / 100)));
    model
        .members()
        .values()
        .forEach(m -> b.member(changed(m, m.roll(), centimetres(m.start()), centimetres(m.end()))));
    model
        .supports()
        .forEach(
            (n, held) ->
                held.forEach(
                    (d, k) ->
                        b.support(
                            n, d, Restraint.elastic(10 * ((Restraint.Elastic) k).stiffness()))));
    return b.build();
  }

  private static MemberEnd centimetres(MemberEnd end) {
    MemberEnd changed = end.offset(end.offset().times(0.1));
    for (Direction d : Direction.values()) {
      if (end.in(d) instanceof EndCondition.Elastic k) {
        changed = changed.spring(d, d.isRotation() ? k.stiffness() / 10 : 10 * k.stiffness());
      }
    }
    return changed;
  }

  private static FrameModel split(FrameModel model, String name, double part) {
    FrameModelBuilder b = FrameModel.builder();
    model.nodes().forEach(b::node);
    model.materials().forEach((n, m) -> b.material(n, m.e(), m.g(), m.density()));
    model.sections().forEach(b::section);
    for (Member m : model.members().values()) {
      if (m.name().equals(name)) {
        b.steppedMember(
            m,
            List.of(
                new FrameModelBuilder.Step(part, m.section()),
                new FrameModelBuilder.Step(1, m.section())));
      } else {
        b.member(m);
      }
    }
    model.supports().forEach((n, held) -> held.forEach((d, k) -> b.support(n, d, k)));
    return b.build();
  }

  @Property(tries = 20)
  void load_cases_solved_together_get_the_same_bits_as_one_at_a_time(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r, r.nextBoolean());
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<LoadCase> cases = new ArrayList<>();
    for (int c = 0; c < 1 + r.nextInt(90); c++) {
      cases.add(RandomFrames.loads(r, model, "case " + c));
    }
    List<Outcome> together = frame.solveAll(cases);
    assertEquals(cases.size(), together.size());
    for (int c = 0; c < cases.size(); c++) {
      Outcome one = frame.solve(cases.get(c));
      if (one instanceof FrameResult result) {
        FrameResult other = together.get(c).result();
        assertArrayEquals(result.displacements(), other.displacements());
        assertArrayEquals(result.reaction("A0"), other.reaction("A0"));
        assertEquals(result.name(), other.name());
      } else {
        assertEquals(one, together.get(c));
      }
    }
  }
}
