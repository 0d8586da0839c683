package org.stoutwork.analysis.solve;

import java.util.Arrays;
import java.util.Optional;
import org.stoutwork.linear.Complementarity;
import org.stoutwork.linear.SmallDense;

/**
 * Finds which contacts press and which stand open, from the one factorisation with all closed.
 *
 * <p>Moving the ground of an open contact away by its gap is the same as opening it, so each state
 * is a superposition; the gaps solve a linear complementarity problem with the (symmetric, positive
 * semi-definite) stiffness of the structure seen from its contacts.
 */
final class ContactSearch {
  private static final double POLISHED = 1e-13;

  private static final int ROUNDS = 8;

  /** Pulls that remain in open contacts, relative to the forces of all contacts or to the loads. */
  private static final double BALANCED = 1e-9;

  /** The same for a probe of a state that has been found: it need not be in balance itself. */
  private static final double PROBED = 1e-6;

  private final GlobalSystem system;
  private final double[][] stiffness;
  private final double[][] shape;

  ContactSearch(GlobalSystem system) {
    this.system = system;
    int n = system.contacts();
    stiffness = new double[n][];
    shape = new double[n][];
    double[] none = new double[system.equations().unknowns()];
    for (int c = 0; c < n; c++) {
      double[] opening = new double[n];
      opening[c] = 1;
      GlobalSystem.Solved solved = system.solve(none, false, opening);
      stiffness[c] = solved.contactForce();
      shape[c] = solved.u();
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (stiffness[i][j] + stiffness[j][i]) / 2;
        stiffness[i][j] = mean;
        stiffness[j][i] = mean;
      }
    }
  }

  /** A contact state that lasts, or why there is none. */
  sealed interface Found permits Settled, Lifting, Wandering {}

  /** The state: displacements with the open contacts open. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Settled(GlobalSystem.Solved solved, boolean[] open, double[] gap) implements Found {}

  /** No state is in equilibrium. */
  record Lifting(Loose loose) implements Found {}

  /** No state was found though one may exist. */
  record Wandering(Unsettled unsettled) implements Found {
    static Wandering after(int exchanges) {
      return new Wandering(
          new Unsettled(
              "no lasting state of the one-way contacts was found in " + exchanges + " exchanges"));
    }
  }

  /** Why no state was found. */
  static String reason(Found found) {
    return found instanceof Lifting lifting
        ? lifting.loose().message()
        : ((Wandering) found).unsettled().message();
  }

  Found find(double[] f) {
    return find(f, system.solve(f, true, null));
  }

  /** The state with every contact closed, even where it would have to pull. */
  Settled held(GlobalSystem.Solved closed) {
    return new Settled(closed, new boolean[system.contacts()], new double[system.contacts()]);
  }

  /** Goes on from the solution with all contacts closed. */
  Found find(double[] f, GlobalSystem.Solved closed) {
    int n = system.contacts();
    boolean[] open = new boolean[n];
    if (Arrays.stream(closed.contactForce()).anyMatch(r -> r < 0)) {
      Complementarity.Answer answer = Complementarity.solve(stiffness, closed.contactForce());
      if (answer instanceof Complementarity.Ray ray) {
        return lifting(ray.direction());
      }
      if (answer instanceof Complementarity.Unfinished unfinished) {
        return Wandering.after(unfinished.exchanges());
      }
      open = ((Complementarity.Settled) answer).open();
    }
    return opened(f, closed, open, true, BALANCED);
  }

  private Found opened(
      double[] f, GlobalSystem.Solved closed, boolean[] open, boolean withGiven, double balanced) {
    int[] which = which(open);
    double[] gap = new double[open.length];
    GlobalSystem.Solved solved = closed;
    double size = largest(closed.contactForce());
    // All rounds after the first only polish the gaps.
    for (int round = 0; round < ROUNDS && which.length > 0; round++) {
      double[] pull = pulls(solved, which);
      if (largest(pull) <= POLISHED * size) {
        break;
      }
      double[] more;
      try {
        more = SmallDense.solveSymmetric(part(which), pull);
      } catch (ArithmeticException singular) {
        double[] direction = new double[open.length];
        for (int c : which) {
          direction[c] = 1;
        }
        return lifting(direction);
      }
      double[] near = solved.u().clone();
      for (int k = 0; k < which.length; k++) {
        gap[which[k]] += more[k];
        add(near, more[k], shape[which[k]]);
      }
      solved = system.solve(f, withGiven, gap, near);
    }
    // Self-balanced forces that hardly reach the contacts leave no more there than their rounding.
    double allowed = balanced * Math.max(size, system.size(f));
    return largest(pulls(solved, which)) <= allowed
        ? new Settled(solved, open, gap)
        : afresh(f, open, withGiven, allowed).orElseGet(() -> lifting(unit(gap)));
  }

  /**
   * What hardly anything holds opens so far that its gaps, added up, drown in rounding. The state
   * is then solved without the open contacts; if that does not balance either, it lifts.
   */
  private Optional<Found> afresh(double[] f, boolean[] open, boolean withGiven, double allowed) {
    if (!(GlobalSystem.of(system.equations().withFrozenContacts(open))
        instanceof GlobalSystem.Ready ready)) {
      return Optional.empty();
    }
    double[] u = ready.system().solve(f, withGiven, null).u();
    int[] which = which(open);
    double[] gap = new double[open.length];
    for (int c : which) {
      gap[c] = system.equations().contacts.get(c).gap().at(u);
    }
    GlobalSystem.Solved solved = system.solve(f, withGiven, gap, u);
    return largest(pulls(solved, which)) <= allowed
        ? Optional.of(new Settled(solved, open, gap))
        : Optional.empty();
  }

  private static double[] pulls(GlobalSystem.Solved solved, int[] which) {
    return Arrays.stream(which).mapToDouble(c -> -solved.contactForce()[c]).toArray();
  }

  private static double[] unit(double[] gap) {
    double largest = largest(gap);
    return Arrays.stream(gap).map(g -> g / largest).toArray();
  }

  private static double largest(double[] values) {
    return Arrays.stream(values).map(Math::abs).max().orElse(0);
  }

  /** Solves with the given contacts open, whatever they would rather do; no settlements. */
  Found frozen(double[] f, boolean[] open) {
    return opened(f, system.solve(f, false, null), open, false, PROBED);
  }

  /** The motion when the ground of one closed contact moves by one unit along its gap. */
  double[] movedContact(int contact, boolean[] open) {
    double[] force = new double[open.length];
    for (int c = 0; c < open.length; c++) {
      force[c] = stiffness[c][contact];
    }
    return opening(shape[contact].clone(), force, open);
  }

  /** A motion with all contacts closed, after the open ones have given way. */
  double[] corrected(double[] closed, boolean[] open) {
    double[] force = new double[open.length];
    for (int c = 0; c < open.length; c++) {
      force[c] = open[c] ? system.contactForceAt(closed, c) : 0;
    }
    return opening(closed, force, open);
  }

  private double[] opening(double[] u, double[] force, boolean[] open) {
    int[] which = which(open);
    if (which.length == 0) {
      return u;
    }
    double[] pull = new double[which.length];
    for (int k = 0; k < which.length; k++) {
      pull[k] = -force[which[k]];
    }
    double[] gap = SmallDense.solveSymmetric(part(which), pull);
    for (int k = 0; k < which.length; k++) {
      add(u, gap[k], shape[which[k]]);
    }
    return u;
  }

  private static void add(double[] u, double factor, double[] motion) {
    for (int i = 0; i < u.length; i++) {
      u[i] += factor * motion[i];
    }
  }

  private static int[] which(boolean[] open) {
    int[] which = new int[open.length];
    int n = 0;
    for (int c = 0; c < open.length; c++) {
      if (open[c]) {
        which[n++] = c;
      }
    }
    return Arrays.copyOf(which, n);
  }

  private double[][] part(int[] which) {
    double[][] part = new double[which.length][which.length];
    for (int a = 0; a < which.length; a++) {
      for (int b = 0; b < which.length; b++) {
        part[a][b] = stiffness[which[a]][which[b]];
      }
    }
    return part;
  }

  private Lifting lifting(double[] direction) {
    double[] motion = new double[system.equations().unknowns()];
    for (int c = 0; c < direction.length; c++) {
      for (int i = 0; i < motion.length; i++) {
        motion[i] += direction[c] * shape[c][i];
      }
    }
    Loose loose =
        LooseMotion.name(system.equations(), motion, "the load lifts or tips the structure:");
    return new Lifting(loose);
  }
}
