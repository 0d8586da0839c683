package org.stoutwork.check;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.assembly.TopLoads;

/**
 * Maxwell's theorem as a check of the analysis: what a unit force here moves there, a unit force
 * there moves here; the same of moments and turning. Forces on the top and moments at joints are
 * tried in every pair.
 */
final class Reciprocity {

  /** Part of the largest possible mutual displacement below which rounding takes over. */
  private static final double NEGLIGIBLE = 1e-3;

  private Reciprocity() {}

  /** One direction of one node; the number counts ux uy uz rx ry rz. */
  private record Probe(String node, int direction) {
    LoadCase unit() {
      double[] six = new double[6];
      six[direction] = 1;
      Load load = new Load.OnNode(node, Vec3.of(six, 0), Vec3.of(six, 3));
      return LoadCase.of("reciprocity " + direction + " of " + node, load);
    }
  }

  /** Compares every pair of probes of one level and tells the tally. */
  static void check(LevelAnalysis level, Tally tally) {
    List<Probe> probes = probes(level.model());
    List<LoadCase> cases = probes.stream().map(Probe::unit).toList();
    level.prepare(cases);
    double[][] flexibility = new double[probes.size()][probes.size()];
    for (int i = 0; i < probes.size(); i++) {
      FrameResult result = level.alone(cases.get(i));
      for (int j = 0; j < probes.size(); j++) {
        Probe probe = probes.get(j);
        flexibility[i][j] = result.displacement(probe.node())[probe.direction()];
      }
    }
    compare(flexibility, tally);
  }

  /** Tells the tally of every pair of a flexibility matrix, which must be symmetric. */
  static void compare(double[][] flexibility, Tally tally) {
    for (int i = 0; i < flexibility.length; i++) {
      for (int j = 0; j < i; j++) {
        double most = Math.sqrt(Math.abs(flexibility[i][i] * flexibility[j][j]));
        tally.mustAgree(flexibility[i][j], flexibility[j][i], NEGLIGIBLE * most);
      }
    }
  }

  private static List<Probe> probes(BenchModel model) {
    int lastLine = model.grid().lines().size() - 1;
    int middle = model.grid().stations().size() / 2;
    List<Probe> out = new ArrayList<>();
    out.add(new Probe(TopLoads.node(0, middle), 2));
    out.add(new Probe(TopLoads.node(lastLine, 0), 2));
    out.add(new Probe(TopLoads.node(lastLine, 0), 0));
    out.add(new Probe(TopLoads.node(lastLine, middle), 4));
    if (!model.joints().isEmpty()) {
      out.add(new Probe(at(model, model.joints().get(0)), 3));
      out.add(new Probe(at(model, model.joints().get(model.joints().size() - 1)), 4));
    }
    return out;
  }

  private static String at(BenchModel model, JointSpot spot) {
    Member member = model.frame().members().get(spot.member());
    return spot.atStart() ? member.from() : member.to();
  }
}
