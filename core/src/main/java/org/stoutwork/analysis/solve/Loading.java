package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.SpanLoad;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Vec3;

/** A combination of loads turned into forces on unknowns, loads along beams, and resultants. */
final class Loading {
  /** Standard gravity, m/s² (exact by definition), which also is N per kg. */
  static final double GRAVITY = 9.80665;

  /** N/mm³ per kg/m³ of density. */
  private static final double WEIGHT = GRAVITY * 1e-9;

  private final FrameSolver.Layout layout;
  private final double[] forces;
  private final Map<String, SpanLoad.Builder> building = new LinkedHashMap<>();
  private final Map<String, SpanLoad> spans = new LinkedHashMap<>();
  private final List<Applied> applied = new ArrayList<>();
  private final Map<Loading, Double> parts = new LinkedHashMap<>();

  private Loading(FrameSolver.Layout layout) {
    this.layout = layout;
    this.forces = new double[layout.equations.unknowns()];
  }

  /** The loads of several results, each with a factor; loads along beams are added when read. */
  static Loading sum(FrameSolver.Layout layout, Map<FrameResult, Double> results) {
    Loading sum = new Loading(layout);
    results.forEach((result, factor) -> sum.include(result.loading(), factor));
    return sum;
  }

  private void include(Loading other, double factor) {
    parts.merge(other, factor, Double::sum);
    for (int i = 0; i < forces.length; i++) {
      forces[i] += factor * other.forces[i];
    }
    for (Applied a : other.applied) {
      applied.add(new Applied(a.at(), a.force().times(factor), a.moment().times(factor)));
    }
  }

  Loading(FrameSolver.Layout layout, Combination combination) {
    this.layout = layout;
    this.forces = new double[layout.equations.unknowns()];
    combination
        .factors()
        .forEach(
            (LoadCase loadCase, Double factor) -> {
              for (Load load : loadCase.loads()) {
                add(load, factor);
              }
            });
    building.forEach((member, builder) -> spans.put(member, builder.build()));
    spans.forEach(this::along);
  }

  private void add(Load load, double factor) {
    for (Attached attachment : layout.attached) {
      applied.addAll(attachment.apply(load, factor, forces));
    }
    if (load instanceof Load.OnNode on) {
      onNode(on.node(), on.force().times(factor), on.moment().times(factor));
    } else if (load instanceof Load.OnMemberPoint on) {
      span(on.member()).add(factor, on);
    } else if (load instanceof Load.OnMemberLine on) {
      span(on.member()).add(factor, on);
    } else if (load instanceof Load.SelfWeight weight) {
      weight(weight.direction().times(factor));
    }
  }

  private void onNode(String node, Vec3 force, Vec3 moment) {
    Integer vertex = layout.vertices.get(node);
    if (vertex == null) {
      throw new IllegalArgumentException("a load acts on the unknown node '" + node + "'");
    }
    double[] six = {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
    for (int d = 0; d < 6; d++) {
      forces[6 * vertex + d] += six[d];
    }
    applied.add(new Applied(layout.model.nodes().get(node), force, moment));
  }

  private SpanLoad.Builder span(String member) {
    Beam beam = layout.beams.get(member);
    if (beam == null) {
      throw new IllegalArgumentException("a load acts on the unknown member '" + member + "'");
    }
    return building.computeIfAbsent(member, m -> SpanLoad.on(beam));
  }

  private void weight(Vec3 direction) {
    for (Beam beam : layout.beams.values()) {
      double q = weightPerLength(beam);
      if (q > 0) {
        span(beam.part()).even(direction.times(q));
      }
    }
    layout
        .model
        .masses()
        .forEach((node, kg) -> onNode(node, direction.times(kg * GRAVITY), Vec3.ZERO));
  }

  /** N per mm of a member. */
  static double weightPerLength(Beam beam) {
    return beam.material().density() * beam.section().area() * WEIGHT;
  }

  private void along(String member, SpanLoad load) {
    Beam beam = layout.beams.get(member);
    List<Beam> pieces = layout.pieces.get(member);
    for (int k = 0; k < pieces.size(); k++) {
      double[] f = pieces.get(k).equivalentLoads(pieceLoad(beam, load, k));
      int[] unknowns = pieces.get(k).unknowns();
      for (int i = 0; i < f.length; i++) {
        forces[unknowns[i]] += f[i];
      }
    }
    double[] w = load.resultant();
    Vec3 start =
        layout.model.nodes().get(beam.member().from()).plus(beam.member().start().offset());
    applied.add(
        new Applied(
            start, beam.axes().toGlobal(Vec3.of(w, 0)), beam.axes().toGlobal(Vec3.of(w, 3))));
  }

  /** Forces on all unknowns. */
  double[] forces() {
    return forces;
  }

  /** Loads along a member, or null. */
  SpanLoad span(Beam beam) {
    if (parts.isEmpty()) {
      return spans.get(beam.part());
    }
    SpanLoad.Builder sum = SpanLoad.on(beam);
    parts.forEach(
        (part, factor) -> {
          SpanLoad own = part.span(beam);
          if (own != null) {
            sum.add(factor, own);
          }
        });
    return sum.isEmpty() ? null : sum.build();
  }

  /** The loads on one piece of a member, or null. */
  SpanLoad span(Beam beam, int piece) {
    SpanLoad load = span(beam);
    return load == null ? null : pieceLoad(beam, load, piece);
  }

  private SpanLoad pieceLoad(Beam beam, SpanLoad load, int piece) {
    int count = layout.pieces.get(beam.part()).size();
    double l = beam.length() / count;
    return count == 1 ? load : load.slice(piece * l, (piece + 1) * l);
  }

  /** Every load as a force and moment at a place, made without any stiffness. */
  List<Applied> applied() {
    return applied;
  }
}
