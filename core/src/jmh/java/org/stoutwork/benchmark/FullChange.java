package org.stoutwork.benchmark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Tie;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.analysis.solve.Response;
import org.stoutwork.analysis.solve.StiffnessSweep;
import org.stoutwork.linear.LdlLanes;

/** A20 with every member and every spring of a stiffness of its own, three load cases. */
final class FullChange {
  private static final LoadCase PUSH = LoadCase.of("push", Load.node("C2", 15, 380, -9));

  private final FrameModel model = Cases.a20();
  private final PreparedFrame frame = Cases.prepared(model);
  private final StiffnessSweep sweep;

  FullChange() {
    List<LoadCase> cases =
        List.of(
            LoadCase.of("down", Load.node("A2", 20, 30, -900), Load.line("topC.0", 0, 0, -0.7)),
            LoadCase.of("rack", Load.node("B2", 410, 12, 0)),
            PUSH);
    List<Response> responses =
        List.of(
            new Response.Displacement("C2", Direction.UX),
            new Response.Displacement("A2", Direction.UZ),
            new Response.Reaction("B0", Direction.UZ),
            new Response.Internal("railA.0", 0, MemberResult.Force.MZ),
            new Response.Internal("railB.0", 0, MemberResult.Force.MY),
            new Response.Internal("highC.0", 0, MemberResult.Force.MY));
    this.sweep = StiffnessSweep.of(frame, cases, responses);
  }

  PreparedFrame frame() {
    return frame;
  }

  StiffnessSweep sweep() {
    return sweep;
  }

  /** Factor of a part in a variant: a number that depends on both alone. */
  static double factor(long variant, int part) {
    long h = (variant * 1_000_003L + part + 1) * 0x9E3779B97F4A7C15L;
    h ^= h >>> 31;
    h *= 0xBF58476D1CE4E5B9L;
    h ^= h >>> 29;
    return 0.6 + 0.8 * (h >>> 11) * 0x1p-53;
  }

  /** Solves the variants of one batch. */
  void batch(long first, StiffnessSweep.Workspace w, int parts) {
    for (int p = 0; p < parts; p++) {
      for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
        w.factor(p, lane, factor(first + lane, p));
      }
    }
    sweep.solve(w);
  }

  /** Some variants of the first batches against models of their own. */
  void check() {
    StiffnessSweep.Workspace w = sweep.workspace();
    int parts = sweep.parts().size();
    for (int v = 0; v < 100; v++) {
      batch(64L * v, w, parts);
      int lane = v * 7 % LdlLanes.WIDTH;
      FrameResult result =
          FrameSolver.prepare(variant(64L * v + lane)).prepared().solve(PUSH).result();
      double[] expected = {
        result.displacement("C2")[0],
        result.displacement("A2")[2],
        result.reaction("B0")[2],
        result.member("railA.0").along(MemberResult.Force.MZ).at(0),
        result.member("railB.0").along(MemberResult.Force.MY).at(0),
        result.member("highC.0").along(MemberResult.Force.MY).at(0)
      };
      double[] size = {10, 10, 380, 1e5, 1e5, 1e5};
      for (int o = 0; o < expected.length; o++) {
        if (!(Math.abs(expected[o] - w.value(o, 2, lane)) <= 1e-9 * size[o])) {
          throw new IllegalStateException(
              "variant " + v + ": expected " + expected[o] + ", found " + w.value(o, 2, lane));
        }
      }
    }
  }

  private FrameModel variant(long number) {
    Map<String, Member> members = new LinkedHashMap<>(model.members());
    Map<String, Material> materials = new LinkedHashMap<>(model.materials());
    Map<String, Map<Direction, Restraint>> feet = new LinkedHashMap<>();
    Map<String, Map<Direction, Link>> links = new LinkedHashMap<>();
    List<String> parts = sweep.parts();
    for (int p = 0; p < parts.size(); p++) {
      String part = parts.get(p);
      double f = factor(number, p);
      Member m = members.get(part);
      if (m != null) {
        Material old = model.materialOf(m);
        materials.put(part, new Material(old.e() * f, old.g() * f, old.density()));
        members.put(
            part,
            new Member(part, m.from(), m.to(), m.section(), part, m.roll(), m.start(), m.end()));
      } else if (model.ties().containsKey(part)) {
        Map<Direction, Link> own = links.computeIfAbsent(part, n -> new EnumMap<>(Direction.class));
        Direction d = Direction.of(own.size());
        Link.Elastic old = (Link.Elastic) model.ties().get(part).links().get(d);
        own.put(d, Link.elastic(f * old.stiffness()));
      } else {
        Map<Direction, Restraint> own =
            feet.computeIfAbsent(part, n -> new EnumMap<>(Direction.class));
        Direction d = Direction.of(own.size());
        Restraint.Elastic old = (Restraint.Elastic) model.supports().get(part).get(d);
        own.put(d, Restraint.elastic(f * old.stiffness()));
      }
    }
    Map<String, Tie> ties = new LinkedHashMap<>();
    for (Tie tie : new ArrayList<>(model.ties().values())) {
      ties.put(
          tie.name(),
          new Tie(tie.name(), tie.lower(), tie.upper(), tie.place(), links.get(tie.name())));
    }
    return new FrameModel(
        model.nodes(), materials, model.sections(), members, feet, ties, model.masses());
  }

  /** One response of many variants, shared out to threads in fixed blocks. */
  double[] run(int batches, int threads) {
    double[] out = new double[batches * LdlLanes.WIDTH];
    Thread[] pool = new Thread[threads];
    int parts = sweep.parts().size();
    for (int t = 0; t < threads; t++) {
      int from = batches * t / threads;
      int to = batches * (t + 1) / threads;
      pool[t] =
          new Thread(
              () -> {
                StiffnessSweep.Workspace w = sweep.workspace();
                for (int b = from; b < to; b++) {
                  batch((long) b * LdlLanes.WIDTH, w, parts);
                  for (int lane = 0; lane < LdlLanes.WIDTH; lane++) {
                    out[b * LdlLanes.WIDTH + lane] = w.value(3, 1, lane);
                  }
                }
              });
      pool[t].start();
    }
    for (Thread thread : pool) {
      try {
        thread.join();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(stopped);
      }
    }
    return out;
  }
}
