package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.BeamField;
import org.stoutwork.analysis.element.BeamState;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.element.Piecewise;
import org.stoutwork.analysis.model.Vec3;

/** Forces and shape of one member. Safe to share between threads. */
public final class MemberResult {
  /** The six internal forces, in the order of {@link #internalAt}. */
  public enum Force {
    /** Axial force, tension positive. */
    N(0),
    /** Shear force along local y. */
    VY(1),
    /** Shear force along local z. */
    VZ(2),
    /** Torque. */
    T(3),
    /** Bending moment about local y. */
    MY(4),
    /** Bending moment about local z. */
    MZ(5);

    private final int index;

    Force(int index) {
      this.index = index;
    }
  }

  private final BeamState state;
  private BeamField field;

  MemberResult(BeamState state) {
    this.state = state;
  }

  private synchronized BeamField field() {
    if (field == null) {
      field = state.field();
    }
    return field;
  }

  /** Length of the flexible part, mm. */
  public double length() {
    return state.beam().length();
  }

  /** Fx Fy Fz Mx My Mz on the flexible part at its start, local axes. */
  public double[] start() {
    return state.startForces();
  }

  /** Fx Fy Fz Mx My Mz on the flexible part at its end, local axes. */
  public double[] end() {
    return state.endForces();
  }

  /**
   * N Vy Vz T My Mz at {@code x}, on the positive face of the piece from 0 to x, local axes; a load
   * just at x is not counted.
   */
  public double[] internalAt(double x) {
    double[] six = new double[6];
    for (int i = 0; i < 6; i++) {
      six[i] = field().internal(i).at(x);
    }
    return six;
  }

  /** Displacements ux uy uz and section rotations rx ry rz at {@code x}, local axes. */
  public double[] deflectionAt(double x) {
    double[] six = new double[6];
    for (int i = 0; i < 6; i++) {
      six[i] = field().displacement(i).at(x);
    }
    return six;
  }

  /** Displacements and section rotations at {@code x}, global axes. */
  public double[] globalDeflectionAt(double x) {
    double[] local = deflectionAt(x);
    Vec3 u = state.toGlobal(Vec3.of(local, 0));
    Vec3 r = state.toGlobal(Vec3.of(local, 3));
    return new double[] {u.x(), u.y(), u.z(), r.x(), r.y(), r.z()};
  }

  /** One internal force all along: values, true extremes with their places. */
  public Piecewise along(Force force) {
    return field().internal(force.index);
  }

  /** One local displacement (0 to 2: mm, 3 to 5: rad) all along. */
  public Piecewise deflectionAlong(int index) {
    return field().displacement(index);
  }

  /**
   * Largest distance of the deflected axis from the straight line between its own two ends, along
   * local y (index 1) or z (index 2), with its sign and place.
   */
  public Extreme sag(int index) {
    return field().fromChord(index).largest();
  }
}
