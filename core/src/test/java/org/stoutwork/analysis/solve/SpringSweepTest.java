package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.solve.JointSpring.End;
import org.stoutwork.analysis.solve.MemberResult.Force;

class SpringSweepTest {
  private static final Set<MemberResult.Force> MOMENTS =
      EnumSet.of(MemberResult.Force.T, MemberResult.Force.MY, MemberResult.Force.MZ);

  static List<Response> responses(FrameModel model) {
    List<Response> all = new ArrayList<>();
    for (String node : List.of("A2", "B1", "D2")) {
      for (Direction d : Direction.values()) {
        all.add(new Response.Displacement(node, d));
      }
    }
    all.add(new Response.Reaction("A0", Direction.UX));
    all.add(new Response.Reaction("B0", Direction.UY));
    all.add(new Response.Reaction("C0", Direction.UZ));
    for (String member : List.of("railA", "topA", "highC")) {
      double l = RandomFrames.length(model, member);
      for (Force force : Force.values()) {
        all.add(new Response.Internal(member, 0, force));
        all.add(new Response.Internal(member, 0.37 * l, force));
      }
      all.add(new Response.Deflection(member, 0.61 * l, Direction.UZ));
    }
    return all;
  }

  private static List<JointSpring> springs(Random r, int count) {
    List<JointSpring> all = new ArrayList<>();
    while (all.size() < count) {
      String member = List.of("railA", "railB", "railC", "topA", "topD").get(r.nextInt(5));
      JointSpring spring =
          new JointSpring(
              member, r.nextBoolean() ? End.START : End.END, Direction.of(r.nextInt(6)));
      if (!all.contains(spring)) {
        all.add(spring);
      }
    }
    return all;
  }

  /** From free over soft, middling and stiff to rigid. */
  private static double constant(Random r, Direction d) {
    double middle = d.isRotation() ? 3e7 : 2e4;
    return switch (r.nextInt(6)) {
      case 0 -> 0;
      case 1 -> Double.POSITIVE_INFINITY;
      case 2 -> middle * 1e9;
      default -> middle * Math.pow(10, RandomFrames.between(r, -2, 2));
    };
  }

  static FrameModel with(FrameModel model, List<JointSpring> springs, double[] k) {
    Map<String, Member> changed = new LinkedHashMap<>(model.members());
    for (int i = 0; i < k.length; i++) {
      JointSpring s = springs.get(i);
      Member m = changed.get(s.member());
      MemberEnd old = s.end() == End.END ? m.end() : m.start();
      MemberEnd end =
          Double.isInfinite(k[i])
              ? old.with(s.direction(), MemberEnd.RIGID.in(s.direction()))
              : old.spring(s.direction(), k[i]);
      changed.put(
          m.name(),
          new Member(
              m.name(),
              m.from(),
              m.to(),
              m.section(),
              m.material(),
              m.roll(),
              s.end() == End.END ? m.start() : end,
              s.end() == End.END ? end : m.end()));
    }
    return model.withMembers(changed);
  }

  static double direct(FrameResult result, Response response) {
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

  static int kind(Response response) {
    if (response instanceof Response.Displacement d) {
      return d.direction().isRotation() ? 1 : 0;
    } else if (response instanceof Response.Deflection) {
      return 0;
    }
    return response instanceof Response.Internal in && MOMENTS.contains(in.force()) ? 3 : 2;
  }

  /** Largest response of each kind: what a difference is measured by. */
  static double[] sizes(List<Response> responses, FrameResult result) {
    double[] size = new double[4];
    for (Response response : responses) {
      int kind = kind(response);
      size[kind] = Math.max(size[kind], Math.abs(direct(result, response)));
    }
    return size;
  }

  @Property(tries = 60)
  void a_variant_is_what_a_fresh_factorisation_gives(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<JointSpring> springs = springs(r, 1 + r.nextInt(16));
    List<LoadCase> cases =
        List.of(RandomFrames.loads(r, model, "one"), RandomFrames.loads(r, model, "two"));
    List<Response> responses = responses(model);
    SpringSweep sweep = SpringSweep.of(frame, springs, cases, responses);
    SpringSweep.Workspace w = sweep.workspace();
    for (int variant = 0; variant < 6; variant++) {
      double[] k = new double[springs.size()];
      for (int i = 0; i < k.length; i++) {
        k[i] = constant(r, springs.get(i).direction());
      }
      SpringSweep.State state = sweep.solve(k, w);
      Preparation fresh = FrameSolver.prepare(with(model, springs, k));
      if (fresh instanceof Loose loose) {
        assertEquals(SpringSweep.State.LOOSE, state);
        assertEquals(loose.direction(), w.loose().direction());
        assertThrows(IllegalStateException.class, () -> w.value(0, 0));
        continue;
      }
      for (int c = 0; c < cases.size(); c++) {
        FrameResult result = fresh.prepared().solve(cases.get(c)).result();
        double[] size = sizes(responses, result);
        for (int o = 0; o < responses.size(); o++) {
          double expected = direct(result, responses.get(o));
          String what = state + " " + w.smallestPivot() + " " + responses.get(o);
          assertEquals(expected, w.value(o, c), 1e-9 * size[kind(responses.get(o))], what);
        }
      }
    }
  }

  @Property(tries = 20)
  void low_mean_and_high_joints_are_updated_without_another_factorisation(@ForAll long seed) {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    List<JointSpring> springs = new ArrayList<>();
    for (String rail : List.of("railA", "railB", "railC", "railD")) {
      for (End end : End.values()) {
        springs.add(new JointSpring(rail, end, Direction.UX));
        springs.add(new JointSpring(rail, end, Direction.RZ));
      }
    }
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    SpringSweep sweep =
        SpringSweep.of(
            frame, springs, List.of(RandomFrames.loads(r, model, "one")), responses(model));
    SpringSweep.Workspace w = sweep.workspace();
    double before = Double.POSITIVE_INFINITY;
    for (double level : new double[] {0.4, 1, 2.5}) {
      double[] k = new double[springs.size()];
      for (int i = 0; i < k.length; i++) {
        k[i] = level * (springs.get(i).direction().isRotation() ? 3e7 : 1.5e4);
      }
      assertEquals(SpringSweep.State.UPDATED, sweep.solve(k, w));
      double most = 0;
      for (int o = 0; o < 18; o++) {
        most = Math.max(most, Math.abs(w.value(o, 0)));
      }
      assertTrue(most > 0 && Double.isFinite(most) && most < 10 * before);
      before = most;
    }
  }

  @Example
  void a_variant_that_becomes_a_mechanism_is_refused_by_the_same_name_as_ever() {
    FrameModel model = cantilever();
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    List<JointSpring> springs =
        List.of(
            new JointSpring("arm", End.START, Direction.RY),
            new JointSpring("arm", End.START, Direction.RX));
    SpringSweep sweep =
        SpringSweep.of(
            frame,
            springs,
            List.of(LoadCase.of("p", org.stoutwork.analysis.model.Load.node("tip", 3, 5, -70))),
            List.of(new Response.Displacement("tip", Direction.UZ)));
    SpringSweep.Workspace w = sweep.workspace();
    for (double[] k : new double[][] {{0, 1e7}, {1e7, 0}, {0, 0}, {1e-9, 1e7}}) {
      assertEquals(SpringSweep.State.LOOSE, sweep.solve(k, w));
      Loose fresh = (Loose) FrameSolver.prepare(with(model, springs, k));
      assertEquals(fresh, w.loose());
    }
    assertEquals(SpringSweep.State.UPDATED, sweep.solve(new double[] {3e6, 1e7}, w));
    // A soft root turns the arm: P L² / k more than the rigid arm.
    double soft = w.value(0, 0);
    sweep.solve(new double[] {Double.POSITIVE_INFINITY, 1e7}, w);
    assertEquals(-70.0 * 730 * 730 / 3e6, soft - w.value(0, 0), 1e-9 * Math.abs(soft));
  }

  private static FrameModel cantilever() {
    return FrameModel.builder()
        .material("wood", 11000, 690, 500)
        .section(
            "rail", new org.stoutwork.analysis.model.CrossSection(3500, 9e5, 2e6, 1e6, 0, 2900))
        .node("wall", 0, 0, 0)
        .node("tip", 730, 0, 0)
        .member("arm", "wall", "tip", "rail", "wood")
        .fixed("wall")
        .build();
  }

  @Property(tries = 10)
  void two_threads_give_the_same_bits_as_one(@ForAll long seed) throws InterruptedException {
    Random r = new Random(seed);
    FrameModel model = RandomFrames.frame(r);
    List<JointSpring> springs = springs(r, 8);
    SpringSweep sweep =
        SpringSweep.of(
            FrameSolver.prepare(model).prepared(),
            springs,
            List.of(RandomFrames.loads(r, model, "one")),
            responses(model));
    int variants = 64;
    double[] one = new double[variants];
    double[] two = new double[variants];
    run(sweep, springs, one, 0, variants);
    Thread other = new Thread(() -> run(sweep, springs, two, 0, 29));
    other.start();
    run(sweep, springs, two, 29, variants);
    other.join();
    assertArrayEquals(one, two);
  }

  private static void run(
      SpringSweep sweep, List<JointSpring> springs, double[] out, int from, int to) {
    SpringSweep.Workspace w = sweep.workspace();
    for (int v = from; v < to; v++) {
      Random own = new Random(77 + v);
      double[] k = new double[springs.size()];
      for (int i = 0; i < k.length; i++) {
        k[i] = constant(own, springs.get(i).direction());
      }
      out[v] = sweep.solve(k, w) == SpringSweep.State.LOOSE ? -1 : w.value(0, 0);
    }
  }

  @Example
  void what_cannot_be_swept_is_refused_with_a_reason() {
    FrameModel model = RandomFrames.frame(new Random(4));
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    JointSpring spring = new JointSpring("railA", End.START, Direction.RY);
    List<LoadCase> none = List.of();
    assertThrows(
        IllegalArgumentException.class,
        () -> SpringSweep.of(frame, List.of(spring, spring), none, List.of()));
    JointSpring nowhere = new JointSpring("rail", End.START, Direction.RY);
    assertThrows(
        IllegalArgumentException.class,
        () -> SpringSweep.of(frame, List.of(nowhere), none, List.of()));
    SpringSweep sweep = SpringSweep.of(frame, List.of(spring), none, List.of());
    for (double[] bad : new double[][] {{-1}, {Double.NaN}, {1, 2}, {}}) {
      assertThrows(IllegalArgumentException.class, () -> sweep.solve(bad, sweep.workspace()));
    }
    FrameModel lifting =
        model.withSupports(
            Map.of(
                "A0",
                Map.of(Direction.UX, Restraint.FIXED, Direction.UZ, Restraint.COMPRESSION_ONLY),
                "B0",
                Map.of(Direction.UY, Restraint.FIXED, Direction.UZ, Restraint.FIXED),
                "C0",
                Map.of(Direction.UY, Restraint.FIXED, Direction.UZ, Restraint.FIXED)));
    PreparedFrame oneWay = FrameSolver.prepare(lifting).prepared();
    assertThrows(
        IllegalArgumentException.class,
        () -> SpringSweep.of(oneWay, List.of(spring), none, List.of()));
  }
}
