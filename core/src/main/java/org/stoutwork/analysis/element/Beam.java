package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;

/**
 * A prismatic Timoshenko beam in space with springs or releases at its ends and rigid arms to its
 * nodes; its stiffness and its answer to loads along it are exact, so one a member is enough.
 *
 * <p>The six forces at the end of the flexible part are the basic unknowns; those at the start
 * follow from equilibrium, so a member's end forces balance whatever the rounding. Immutable.
 */
public final class Beam implements Element {
  private final Member member;
  private final CrossSection section;
  private final Material material;
  private final LocalAxes axes;
  private final double length;
  private final Vec3 startArm;
  private final BasicSystem basic;
  private final int[] unknowns;
  private final double[][] relative;
  private final double[] stiffness;

  /**
   * Makes the beam of a member.
   *
   * @param fromVertex number of its start node
   * @param toVertex number of its end node
   */
  public Beam(FrameModel model, Member member, int fromVertex, int toVertex) {
    this.member = member;
    this.section = model.sectionOf(member);
    this.material = model.materialOf(member);
    this.startArm = member.start().offset();
    Vec3 endArm = member.end().offset();
    Vec3 start = model.nodes().get(member.from()).plus(startArm);
    Vec3 axis = model.nodes().get(member.to()).plus(endArm).minus(start);
    this.length = axis.length();
    this.axes = LocalAxes.along(axis, member.roll());
    this.basic = new BasicSystem(length, section, material, member.start(), member.end());
    this.unknowns = new int[12];
    for (int d = 0; d < 6; d++) {
      unknowns[d] = 6 * fromVertex + d;
      unknowns[6 + d] = 6 * toVertex + d;
    }
    this.relative = relativeMotion(startArm.plus(axis), endArm);
    this.stiffness = congruent(basic.stiffness());
  }

  /** Rows: motion of the end relative to the start carried along rigidly; columns: unknowns. */
  private double[][] relativeMotion(Vec3 fromNodeToEnd, Vec3 endArm) {
    double[][] b = new double[6][12];
    for (int i = 0; i < 3; i++) {
      Vec3 e = axes.axis(i);
      put(b[i], 0, e.times(-1));
      put(b[i], 3, fromNodeToEnd.cross(e).times(-1));
      put(b[i], 6, e);
      put(b[i], 9, endArm.cross(e));
      put(b[3 + i], 3, e.times(-1));
      put(b[3 + i], 9, e);
    }
    return b;
  }

  private static void put(double[] row, int at, Vec3 v) {
    row[at] = v.x();
    row[at + 1] = v.y();
    row[at + 2] = v.z();
  }

  private double[] congruent(double[][] k) {
    double[][] kb = new double[6][12];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        if (k[i][j] != 0) {
          for (int c = 0; c < 12; c++) {
            kb[i][c] += k[i][j] * relative[j][c];
          }
        }
      }
    }
    double[] full = new double[144];
    for (int r = 0; r < 12; r++) {
      for (int c = r; c < 12; c++) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
          sum += relative[i][r] * kb[i][c];
        }
        full[12 * r + c] = sum;
        full[12 * c + r] = sum;
      }
    }
    return full;
  }

  @Override
  public String part() {
    return member.name();
  }

  /** The member this beam stands for. */
  public Member member() {
    return member;
  }

  /** Length of the flexible part, mm. */
  public double length() {
    return length;
  }

  /** Local axes. */
  public LocalAxes axes() {
    return axes;
  }

  /** Section of the member. */
  public CrossSection section() {
    return section;
  }

  /** Material of the member. */
  public Material material() {
    return material;
  }

  /** What moves freely because of the releases alone, in words, or null when nothing does. */
  public String looseMotion() {
    return BasicSystem.looseMotion(member.start(), member.end(), length);
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  @Override
  public double[] stiffness() {
    return stiffness;
  }

  @Override
  public double[] forces(double[] u) {
    return nodeForces(basic.forces(relative(u)));
  }

  private double[] relative(double[] u) {
    double[] d = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int c = 0; c < 12; c++) {
        d[i] += relative[i][c] * u[c];
      }
    }
    return d;
  }

  private double[] nodeForces(double[] q) {
    double[] f = new double[12];
    for (int i = 0; i < 6; i++) {
      for (int c = 0; c < 12; c++) {
        f[c] += relative[i][c] * q[i];
      }
    }
    return f;
  }

  /** The forces on its nodes (order of {@link #unknowns()}) that replace loads along the beam. */
  public double[] equivalentLoads(SpanLoad load) {
    double[] f = nodeForces(basic.answer(new double[6], load).endForces());
    double[] w = load.resultant();
    Vec3 force = axes.toGlobal(Vec3.of(w, 0));
    Vec3 moment = axes.toGlobal(Vec3.of(w, 3)).plus(startArm.cross(force));
    for (int c = 0; c < 12; c++) {
      f[c] = -f[c];
    }
    double[] atStart = {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
    for (int c = 0; c < 6; c++) {
      f[c] += atStart[c];
    }
    return f;
  }

  /**
   * Forces and shape of the beam.
   *
   * @param u displacements of its nodes, in the order of {@link #unknowns()}
   * @param load the loads along it, or null for none
   */
  public BeamState state(double[] u, SpanLoad load) {
    SpanLoad carried = load == null ? SpanLoad.none(length) : load;
    BasicSystem.Answer answer = basic.answer(relative(u), carried);
    double[] start = startMotion(u);
    for (int i = 0; i < 6; i++) {
      start[i] -= answer.startSlip()[i];
    }
    return new BeamState(this, carried, answer.startForces(), answer.endForces(), start);
  }

  /**
   * Local motion of the place where the flexible part starts, on the node's side of the springs.
   */
  private double[] startMotion(double[] u) {
    Vec3 rotation = Vec3.of(u, 3);
    Vec3 shift = axes.toLocal(Vec3.of(u, 0).plus(rotation.cross(startArm)));
    Vec3 turn = axes.toLocal(rotation);
    return new double[] {shift.x(), shift.y(), shift.z(), turn.x(), turn.y(), turn.z()};
  }
}
