package org.stoutwork.analysis.model;

/** One load of a load case. */
public sealed interface Load
    permits Load.OnNode, Load.OnMemberPoint, Load.OnMemberLine, Load.SelfWeight, PanelLoad {

  /** The same load, so many times as great. */
  Load times(double factor);

  /** The axes in which a member load is given. */
  enum Axes {
    /** The axes of the model. */
    GLOBAL,
    /** The axes of the member. */
    LOCAL
  }

  /**
   * Force and moment on a node.
   *
   * @param node its name
   * @param force N, global axes
   * @param moment N mm, global axes
   */
  record OnNode(String node, Vec3 force, Vec3 moment) implements Load {
    @Override
    public Load times(double factor) {
      return new OnNode(node, force.times(factor), moment.times(factor));
    }
  }

  /**
   * Force and moment at one place of a member.
   *
   * @param member its name
   * @param at distance from the start of the flexible part, mm
   * @param force N
   * @param moment N mm
   * @param axes the axes of both
   */
  record OnMemberPoint(String member, double at, Vec3 force, Vec3 moment, Axes axes)
      implements Load {
    /** Checks the place. */
    public OnMemberPoint {
      Check.notNegative("place of the load on member '" + member + "'", at, "mm");
    }

    @Override
    public Load times(double factor) {
      return new OnMemberPoint(member, at, force.times(factor), moment.times(factor), axes);
    }
  }

  /**
   * Line load that changes linearly along part of a member.
   *
   * @param member its name
   * @param from distance of its start from the start of the flexible part, mm
   * @param to distance of its end, mm; infinite means the end of the member
   * @param start intensity at {@code from}, N per mm of member length
   * @param end intensity at {@code to}, N/mm
   * @param axes the axes of both
   */
  record OnMemberLine(String member, double from, double to, Vec3 start, Vec3 end, Axes axes)
      implements Load {
    /** Checks the range. */
    public OnMemberLine {
      Check.notNegative("start of the load on member '" + member + "'", from, "mm");
      if (!(to >= from)) {
        throw new IllegalArgumentException(
            "the load on member '"
                + member
                + "' ends at "
                + to
                + " mm, before its start at "
                + from
                + " mm");
      }
    }

    @Override
    public Load times(double factor) {
      return new OnMemberLine(member, from, to, start.times(factor), end.times(factor), axes);
    }
  }

  /**
   * The weight of all members' flexible parts and of the lumped masses.
   *
   * @param direction multiple of gravity; (0, 0, -1) is ordinary weight
   */
  record SelfWeight(Vec3 direction) implements Load {
    @Override
    public Load times(double factor) {
      return new SelfWeight(direction.times(factor));
    }
  }

  /** A force on a node. */
  static Load node(String node, double fx, double fy, double fz) {
    return new OnNode(node, new Vec3(fx, fy, fz), Vec3.ZERO);
  }

  /** A force at one place of a member, global axes. */
  static Load point(String member, double at, double fx, double fy, double fz) {
    return new OnMemberPoint(member, at, new Vec3(fx, fy, fz), Vec3.ZERO, Axes.GLOBAL);
  }

  /** An even line load over a whole member, global axes, N per mm of member length. */
  static Load line(String member, double qx, double qy, double qz) {
    Vec3 q = new Vec3(qx, qy, qz);
    return new OnMemberLine(member, 0, Double.POSITIVE_INFINITY, q, q, Axes.GLOBAL);
  }

  /** Ordinary weight. */
  static Load selfWeight() {
    return new SelfWeight(new Vec3(0, 0, -1));
  }
}
