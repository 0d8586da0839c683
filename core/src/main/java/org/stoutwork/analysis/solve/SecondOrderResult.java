package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.BeamField;
import org.stoutwork.analysis.element.SpanLoad;
import org.stoutwork.analysis.model.Vec3;

/** Displacements, reactions and member forces of a second-order analysis. Immutable. */
public final class SecondOrderResult implements SecondOrder.Answer {
  private final FrameSolver.Layout layout;
  private final Loading loading;
  private final FrameResult basis;
  private final double[] u;
  private final List<AxialElement> elements;
  private final int rounds;

  SecondOrderResult(
      FrameSolver.Layout layout,
      Loading loading,
      ContactSearch.Settled settled,
      List<AxialElement> elements,
      int rounds) {
    this.layout = layout;
    this.loading = loading;
    this.elements = elements;
    this.rounds = rounds;
    this.u = settled.solved().u();
    this.basis = new FrameResult(layout, "second order", loading, settled, couples());
  }

  /** What the axial forces add on the displaced structure, as loads on the undeformed one. */
  private List<Applied> couples() {
    List<Applied> couples = new ArrayList<>();
    int at = 0;
    for (String member : layout.pieces.keySet()) {
      Beam whole = layout.beams.get(member);
      Vec3 from = layout.model.nodes().get(whole.member().from());
      Vec3 start = from.plus(whole.member().start().offset());
      int count = layout.pieces.get(member).size();
      for (int k = 0; k < count; k++) {
        Vec3 a = k == 0 ? from : start.plus(whole.span().times((double) k / count));
        Vec3 b =
            k == count - 1
                ? layout.model.nodes().get(whole.member().to())
                : start.plus(whole.span().times((k + 1.0) / count));
        double[] f =
            elements.get(at).geometricForces(SecondOrder.own(layout.pieces.get(member).get(k), u));
        couples.add(new Applied(a, Vec3.of(f, 0).times(-1), Vec3.of(f, 3).times(-1)));
        couples.add(new Applied(b, Vec3.of(f, 6).times(-1), Vec3.of(f, 9).times(-1)));
        at++;
      }
    }
    return couples;
  }

  /** The same as a result on the undeformed structure, for what is joined to the frame. */
  FrameResult basis() {
    return basis;
  }

  /** Displacement of a node, ux uy uz (mm) rx ry rz (rad), global axes. */
  public double[] displacement(String node) {
    return basis.displacement(node);
  }

  /** Force and moment by the support on the structure, global axes. */
  public double[] reaction(String node) {
    return basis.reaction(node);
  }

  /** The state of every one-way support and contact. */
  public List<ContactState> contacts() {
    return basis.contacts();
  }

  /** Rounds until the axial forces agreed. */
  public int rounds() {
    return rounds;
  }

  /** Unbalanced loads, reactions and couples of axial forces, relative to the sum of all sizes. */
  public double equilibriumError() {
    return basis.equilibriumError();
  }

  /** Largest unbalanced nodal force relative to the largest nodal load. */
  public double residual() {
    return basis.residual();
  }

  /** As {@link FrameResult#reciprocityError()}, the axial forces held at their last values. */
  public double reciprocityError() {
    return basis.reciprocityError();
  }

  /**
   * Fx Fy Fz Mx My Mz on the flexible part at its start, along the undeformed local axes.
   *
   * @throws IllegalArgumentException for an unknown member
   */
  public double[] start(String member) {
    return pieceEnds(member, 0)[0];
  }

  /** Fx Fy Fz Mx My Mz on the flexible part at its end, along the undeformed local axes. */
  public double[] end(String member) {
    return pieceEnds(member, pieces(member).size() - 1)[1];
  }

  /**
   * N Vy Vz T My Mz at a station, on the positive face of what lies before it.
   *
   * @param station 0 (the start) to the number of pieces (the end); stations are evenly spaced
   */
  public double[] internal(String member, int station) {
    if (station == 0) {
      double[] s = pieceEnds(member, 0)[0];
      for (int i = 0; i < 6; i++) {
        s[i] = -s[i];
      }
      return s;
    }
    return pieceEnds(member, station - 1)[1];
  }

  /**
   * Displacements ux uy uz and section rotations rx ry rz of the flexible part at a station, local
   * axes of the undeformed member.
   *
   * @param station as for {@link #internal}
   */
  public double[] deflection(String member, int station) {
    int piece = Math.max(0, station - 1);
    Beam beam = pieces(member).get(piece);
    SpanLoad load = loading.span(layout.beams.get(member), piece);
    BeamField field = beam.state(SecondOrder.own(beam, u), load).field();
    double[] six = new double[6];
    for (int i = 0; i < 6; i++) {
      six[i] = field.displacement(i).at(station == 0 ? 0 : beam.length());
    }
    return six;
  }

  /** Number of pieces, and of the last station. */
  public int stations() {
    return layout.pieces.values().stream().mapToInt(List::size).findFirst().orElse(0);
  }

  private List<Beam> pieces(String member) {
    List<Beam> pieces = layout.pieces.get(member);
    if (pieces == null) {
      throw new IllegalArgumentException(
          "there is no member '" + member + "'; known are " + layout.beams.keySet());
    }
    return pieces;
  }

  private double[][] pieceEnds(String member, int piece) {
    List<Beam> pieces = pieces(member);
    int at = piece;
    for (var other : layout.pieces.entrySet()) {
      if (other.getKey().equals(member)) {
        break;
      }
      at += other.getValue().size();
    }
    Beam beam = pieces.get(piece);
    double[] own = SecondOrder.own(beam, u);
    double[] f = elements.get(at).forces(own);
    SpanLoad load = loading.span(layout.beams.get(member), piece);
    if (load != null) {
      double[] equivalent = beam.equivalentLoads(load);
      for (int i = 0; i < 12; i++) {
        f[i] -= equivalent[i];
      }
    }
    return new double[][] {
      local(beam, f, 0, beam.member().start().offset()),
      local(beam, f, 6, beam.member().end().offset())
    };
  }

  /** Nodal forces moved to the tip of the rigid arm and turned into local axes. */
  private static double[] local(Beam beam, double[] f, int at, Vec3 arm) {
    Vec3 force = Vec3.of(f, at);
    Vec3 moment = Vec3.of(f, at + 3).minus(arm.cross(force));
    Vec3 a = beam.axes().toLocal(force);
    Vec3 b = beam.axes().toLocal(moment);
    return new double[] {a.x(), a.y(), a.z(), b.x(), b.y(), b.z()};
  }
}
