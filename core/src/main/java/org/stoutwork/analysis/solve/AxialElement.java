package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.Element;

/** A piece of a beam together with the stiffness that its axial force adds. */
final class AxialElement implements Element {
  private final Beam beam;
  private final double[] geometric;
  private final double[] stiffness;

  /**
   * Makes the element.
   *
   * @param perNewton geometric stiffness for a tension of 1 N
   * @param force axial force, tension positive, N
   */
  AxialElement(Beam beam, double[] perNewton, double force) {
    this.beam = beam;
    this.geometric = new double[perNewton.length];
    this.stiffness = beam.stiffness().clone();
    for (int i = 0; i < perNewton.length; i++) {
      geometric[i] = force * perNewton[i];
      stiffness[i] += geometric[i];
    }
  }

  @Override
  public String part() {
    return beam.part();
  }

  @Override
  public int[] unknowns() {
    return beam.unknowns();
  }

  @Override
  public double[] stiffness() {
    return stiffness;
  }

  @Override
  public double[] forces(double[] u) {
    double[] f = beam.forces(u);
    double[] extra = geometricForces(u);
    for (int i = 0; i < f.length; i++) {
      f[i] += extra[i];
    }
    return f;
  }

  /** The part of the forces that the axial force causes. */
  double[] geometricForces(double[] u) {
    double[] f = new double[u.length];
    for (int i = 0; i < f.length; i++) {
      for (int j = 0; j < f.length; j++) {
        f[i] += geometric[i * f.length + j] * u[j];
      }
    }
    return f;
  }
}
