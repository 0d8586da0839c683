package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
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
  private final Vec3 endArm;
  private final BasicSystem basic;
  private final int[] unknowns;
  private final double[][] relative;
  private final double[] stiffness;
  private final SpanLoad unloaded;

  /**
   * Makes the beam of a member.
   *
   * @param fromVertex number of its start node
   * @param toVertex number of its end node
   */
  public Beam(FrameModel model, Member member, int fromVertex, int toVertex) {
    this(
        member,
        model.sectionOf(member),
        model.materialOf(member),
        span(model, member),
        LocalAxes.along(span(model, member), member.roll()),
        new int[] {fromVertex, toVertex});
  }

  private Beam(
      Member member,
      CrossSection section,
      Material material,
      Vec3 span,
      LocalAxes axes,
      int[] vertices) {
    this.member = member;
    this.section = section;
    this.material = material;
    this.startArm = member.start().offset();
    this.endArm = member.end().offset();
    this.length = span.length();
    this.unloaded = SpanLoad.none(length);
    this.axes = axes;
    this.basic = new BasicSystem(length, section, material, member.start(), member.end());
    this.unknowns = new int[12];
    for (int d = 0; d < 6; d++) {
      unknowns[d] = 6 * vertices[0] + d;
      unknowns[6 + d] = 6 * vertices[1] + d;
    }
    this.relative = relativeMotion(startArm.plus(span), endArm);
    this.stiffness = Congruence.of(basic.stiffness(), relative);
  }

  private static Vec3 span(FrameModel model, Member member) {
    Vec3 start = model.nodes().get(member.from()).plus(member.start().offset());
    return model.nodes().get(member.to()).plus(member.end().offset()).minus(start);
  }

  /** The vector from the start to the end of the flexible part, global axes, mm. */
  public Vec3 span() {
    return axes.x().times(length);
  }

  /**
   * One of {@code pieces} equal lengths of this beam; the first keeps the start's conditions and
   * arm, the last the end's.
   *
   * @param index from 0
   */
  public Beam piece(int index, int pieces, int fromVertex, int toVertex) {
    Member part =
        new Member(
            member.name(),
            member.from(),
            member.to(),
            member.section(),
            member.material(),
            member.roll(),
            index == 0 ? member.start() : MemberEnd.RIGID,
            index == pieces - 1 ? member.end() : MemberEnd.RIGID);
    int[] vertices = {fromVertex, toVertex};
    return new Beam(part, section, material, span().times(1.0 / pieces), axes, vertices);
  }

  /**
   * A matrix over the twelve local displacements of the flexible part (start, then end), brought to
   * {@link #unknowns()} through the end springs and the rigid arms.
   */
  double[] fromFlexible(double[][] local) {
    double[][] t = new double[12][12];
    for (int c = 0; c < 12; c++) {
      double[] unit = new double[12];
      unit[c] = 1;
      double[] flexible = flexibleMotion(unit);
      for (int r = 0; r < 12; r++) {
        t[r][c] = flexible[r];
      }
    }
    return Congruence.of(local, t);
  }

  /** Local displacements of the flexible part's two ends, inside the end springs. */
  double[] flexibleMotion(double[] u) {
    BasicSystem.Answer answer = basic.answer(relative(u), SpanLoad.none(length));
    double[] start = nodeMotion(u, 0, startArm);
    double[] end = nodeMotion(u, 6, endArm);
    double[] both = new double[12];
    for (int i = 0; i < 6; i++) {
      both[i] = start[i] - answer.startSlip()[i];
      both[6 + i] = end[i] - answer.endSlip()[i];
    }
    return both;
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

  @Override
  public void addForces(double[][] u, double[][] f, int n) {
    double[][] own = new double[12][];
    for (int c = 0; c < 12; c++) {
      own[c] = u[unknowns[c]];
    }
    double[][] d = new double[6][n];
    for (int i = 0; i < 6; i++) {
      Rows.sum(d[i], n, relative[i], own);
    }
    double[][] q = new double[6][n];
    for (int i = 0; i < 6; i++) {
      Rows.sum(q[i], n, basic.stiffness()[i], d);
    }
    double[] column = new double[6];
    double[] force = new double[n];
    for (int c = 0; c < 12; c++) {
      for (int i = 0; i < 6; i++) {
        column[i] = relative[i][c];
      }
      Rows.sum(force, n, column, q);
      Rows.add(f[unknowns[c]], n, 1, force);
    }
  }

  /** Six sums side by side: none waits for another. */
  private double[] relative(double[] u) {
    double[] r0 = relative[0];
    double[] r1 = relative[1];
    double[] r2 = relative[2];
    double[] r3 = relative[3];
    double[] r4 = relative[4];
    double[] r5 = relative[5];
    double d0 = 0;
    double d1 = 0;
    double d2 = 0;
    double d3 = 0;
    double d4 = 0;
    double d5 = 0;
    for (int c = 0; c < 12; c++) {
      double v = u[c];
      d0 += r0[c] * v;
      d1 += r1[c] * v;
      d2 += r2[c] * v;
      d3 += r3[c] * v;
      d4 += r4[c] * v;
      d5 += r5[c] * v;
    }
    return new double[] {d0, d1, d2, d3, d4, d5};
  }

  private double[] nodeForces(double[] q) {
    double[] r0 = relative[0];
    double[] r1 = relative[1];
    double[] r2 = relative[2];
    double[] r3 = relative[3];
    double[] r4 = relative[4];
    double[] r5 = relative[5];
    double[] f = new double[12];
    for (int c = 0; c < 12; c++) {
      f[c] =
          r0[c] * q[0] + r1[c] * q[1] + r2[c] * q[2] + r3[c] * q[3] + r4[c] * q[4] + r5[c] * q[5];
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
    SpanLoad carried = load == null ? unloaded : load;
    return new BeamState(this, carried, basic.answer(relative(u), carried), u);
  }

  /** Local motion of the start of the flexible part, before any spring there has slipped. */
  double[] startMotion(double[] u) {
    return nodeMotion(u, 0, startArm);
  }

  /**
   * Local motion of the end of the flexible part as a cantilever from its start, for another
   * section or the own one.
   *
   * @param end forces on its end, local axes
   * @param load the loads along it, or null for none
   */
  public double[] cantileverTip(CrossSection with, double[] end, SpanLoad load) {
    SpanLoad carried = load == null ? SpanLoad.none(length) : load;
    double[] w = carried.resultant();
    double[] start = new double[6];
    for (int i = 0; i < 6; i++) {
      start[i] = -end[i] - w[i];
    }
    start[4] += length * end[2];
    start[5] -= length * end[1];
    BeamField field = new BeamField(with, material, carried, start, new double[6]);
    double[] tip = new double[6];
    for (int i = 0; i < 6; i++) {
      tip[i] = field.displacement(i).atEnd();
    }
    return tip;
  }

  /**
   * The motion of one node, in the order of {@link #unknowns()}, that carries the end of the
   * flexible part by one unit along a local direction: what a slip of that end takes away from the
   * beam.
   *
   * @param atEnd false at the start
   * @param direction 0 to 5, local
   */
  public double[] slip(boolean atEnd, int direction) {
    Vec3 axis = axes.axis(direction % 3);
    Vec3 turn = direction < 3 ? Vec3.ZERO : axis;
    Vec3 shift = direction < 3 ? axis : axis.cross(atEnd ? endArm : startArm).times(-1);
    double[] motion = new double[12];
    put(motion, atEnd ? 6 : 0, shift);
    put(motion, atEnd ? 9 : 3, turn);
    return motion;
  }

  /** Local motion of the tip of a node's rigid arm. */
  private double[] nodeMotion(double[] u, int at, Vec3 arm) {
    Vec3 rotation = Vec3.of(u, at + 3);
    Vec3 shift = axes.toLocal(Vec3.of(u, at).plus(rotation.cross(arm)));
    Vec3 turn = axes.toLocal(rotation);
    return new double[] {shift.x(), shift.y(), shift.z(), turn.x(), turn.y(), turn.z()};
  }
}
