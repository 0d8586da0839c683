package org.stoutwork.analysis.solve;

import java.util.List;

/**
 * One solution while it is refined: what the elements' own forces leave unbalanced calls for a
 * correction, and again, until next to nothing is left or it no longer shrinks.
 */
final class Refining {
  /** A solution is refined until its residual, relative to the forces, is below this. */
  static final double REFINED = 1e-12;

  private static final int STEPS = 6;

  private final GlobalSystem system;
  private final double[] values;
  private final double[] acting;
  private final double[] opening;
  private final double size;
  private final double[] reduced;
  private double[] u;
  private double[] lacking;
  private double[] rest;
  private double residual = Double.POSITIVE_INFINITY;
  private int steps;
  private boolean done;

  /**
   * Begins with nothing but the given displacements.
   *
   * @param f forces on all unknowns
   * @param values given displacements of the conditions; kept and added to
   * @param opening the motion of each contact's ground along its gap, or null for none
   */
  Refining(GlobalSystem system, double[] f, double[] values, double[] opening) {
    this.system = system;
    this.opening = opening;
    this.values = values;
    this.acting = f.clone();
    this.reduced = new double[system.elimination().reducedSize()];
    for (int c = 0; opening != null && c < opening.length; c++) {
      int condition = system.conditionOf(c);
      if (condition >= 0) {
        values[condition] += opening[c];
      } else {
        Contact contact = system.equations().contacts.get(c);
        contact.gap().addTo(acting, contact.stiffness() * opening[c]);
      }
    }
    u = system.elimination().expand(reduced, values);
    double[] first = system.lacking(u, acting);
    double given = Assembling.isZero(u) ? 0 : system.size(less(acting, first));
    size = Math.max(system.size(acting), given);
    judge(first);
  }

  private static double[] less(double[] a, double[] b) {
    double[] out = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      out[i] = a[i] - b[i];
    }
    return out;
  }

  private void judge(double[] left) {
    lacking = left;
    rest = system.elimination().gather(lacking);
    double before = residual;
    residual = system.reducedSize(rest);
    done = steps == STEPS || residual <= REFINED * size || !(residual < 0.5 * before);
  }

  /** Whether another correction for {@link #rest} is wanted. */
  boolean wants() {
    return !done;
  }

  /** What is still unbalanced, on the reduced unknowns. */
  double[] rest() {
    return rest;
  }

  /** Adds a correction of the reduced unknowns. */
  void take(double[] correction) {
    move(correction);
    judge(system.lacking(u, acting));
  }

  /** Adds corrections to many solutions: the same, in less time. */
  static void takeAll(GlobalSystem system, List<Refining> all, double[][] corrections) {
    for (int k = 0; k < corrections.length; k++) {
      all.get(k).move(corrections[k]);
    }
    double[][] acting = all.stream().map(Refining::acting).toArray(double[][]::new);
    double[][] moved = all.stream().map(Refining::displacements).toArray(double[][]::new);
    double[][] lacking = Assembling.lessAll(acting, system.elements(), moved);
    for (int k = 0; k < lacking.length; k++) {
      all.get(k).judge(lacking[k]);
    }
  }

  private void move(double[] correction) {
    for (int r = 0; r < reduced.length; r++) {
      reduced[r] += correction[r];
    }
    u = system.elimination().expand(reduced, values);
    steps++;
  }

  /** Displacements of all unknowns so far. */
  double[] displacements() {
    return u;
  }

  /** Forces less what the elements call for; on eliminated unknowns what their conditions give. */
  double[] lacking() {
    return lacking;
  }

  /** The forces that act, those of moved elastic grounds included. */
  double[] acting() {
    return acting;
  }

  /** Given displacements of the conditions, moved grounds included. */
  double[] values() {
    return values;
  }

  /** How far the ground of a contact has been moved along its gap. */
  double ground(int contact) {
    return opening == null ? 0 : opening[contact];
  }

  /** Largest unbalanced force relative to the largest force; 0 when there is none at all. */
  double residual() {
    return size == 0 ? 0 : residual / size;
  }
}
