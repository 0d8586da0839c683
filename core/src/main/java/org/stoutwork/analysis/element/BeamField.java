package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Material;

/**
 * Internal forces and displacements all along one beam, exact for the Timoshenko theory: found by
 * integrating the loads from the start, where forces and displacements are known.
 */
public final class BeamField {
  private final Piecewise[] internal = new Piecewise[6];
  private final Piecewise[] displacement = new Piecewise[6];

  /**
   * Integrates along the beam.
   *
   * @param s forces on the beam at its start, local
   * @param u displacements of the beam's start, local
   */
  BeamField(CrossSection section, Material material, SpanLoad load, double[] s, double[] u) {
    forces(load, s);
    displacements(section, material, u);
  }

  private void forces(SpanLoad load, double[] s) {
    for (int i = 0; i < 3; i++) {
      internal[i] = load.intensity(i, -1).integral(-s[i], load.negativeForces(i));
    }
    double[][] none = new double[load.breaks().length - 1][1];
    internal[3] = Piecewise.of(load.breaks(), none).integral(-s[3], load.negativeMoments(0));
    internal[4] = internal[2].integral(-s[4], load.negativeMoments(1));
    internal[5] = internal[1].times(-1).integral(-s[5], load.negativeMoments(2));
  }

  private void displacements(CrossSection c, Material m, double[] u) {
    displacement[0] = internal[0].times(1 / (m.e() * c.area())).integral(u[0], null);
    displacement[3] = internal[3].times(1 / (m.g() * c.j())).integral(u[3], null);
    displacement[4] = internal[4].times(1 / (m.e() * c.iy())).integral(u[4], null);
    displacement[5] = internal[5].times(1 / (m.e() * c.iz())).integral(u[5], null);
    double alongY = c.asy() == 0 ? 0 : 1 / (m.g() * c.asy());
    double alongZ = c.asz() == 0 ? 0 : 1 / (m.g() * c.asz());
    displacement[1] = displacement[5].combine(1, alongY, internal[1]).integral(u[1], null);
    displacement[2] = displacement[4].combine(-1, alongZ, internal[2]).integral(u[2], null);
  }

  /** N, Vy, Vz, T, My or Mz (index 0 to 5) along the beam. */
  public Piecewise internal(int index) {
    return internal[index];
  }

  /** Local displacement ux, uy, uz or section rotation rx, ry, rz (index 0 to 5) along the beam. */
  public Piecewise displacement(int index) {
    return displacement[index];
  }

  /** Displacement {@code index} measured from the straight line between its values at both ends. */
  public Piecewise fromChord(int index) {
    Piecewise u = displacement[index];
    double slope = (u.atEnd() - u.at(0)) / u.length();
    double[] breaks = u.breaks();
    double[][] chord = new double[breaks.length - 1][];
    for (int k = 0; k < chord.length; k++) {
      chord[k] = new double[] {u.at(0) + slope * breaks[k], slope};
    }
    return u.combine(1, -1, Piecewise.of(breaks, chord));
  }
}
