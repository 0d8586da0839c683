package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.element.SpringElement;
import org.stoutwork.linear.Condition;
import org.stoutwork.linear.Factorisation;
import org.stoutwork.linear.LdlFactor;
import org.stoutwork.linear.LdlPattern;
import org.stoutwork.linear.MinimumDegree;
import org.stoutwork.linear.SparseSymmetric;

/**
 * The equations of a structure with all contacts closed, factorised once. Rigid conditions are
 * eliminated, not approximated. Immutable; any number of threads may solve with it.
 */
public final class GlobalSystem {
  /** Structures whose scaled condition number exceeds this are refused as nearly loose. */
  public static final double CONDITION_LIMIT = 1e11;

  private final Equations equations;
  private final List<Element> elements;
  private final double[] given;
  private final int firstContactCondition;
  private final int[] contactCondition;
  private final Elimination elimination;

  /** What makes a force of one reduced unknown's: 1, or for a moment one over the reach. */
  private final double[] inForce;

  private final SparseSymmetric matrix;
  private final LdlFactor factor;
  private final Condition condition;
  private final Betti probe;

  private GlobalSystem(
      Equations equations,
      List<Element> elements,
      int[] contactCondition,
      Elimination elimination,
      SparseSymmetric matrix,
      LdlFactor factor) {
    this.equations = equations;
    this.elements = elements;
    this.firstContactCondition = equations.conditions.size();
    this.contactCondition = contactCondition;
    this.elimination = elimination;
    this.inForce = new double[elimination.reducedSize()];
    for (int r = 0; r < inForce.length; r++) {
      inForce[r] = elimination.unknownOf(r) % 6 < 3 ? 1 : 1 / equations.reach();
    }
    this.matrix = matrix;
    this.factor = factor;
    this.condition = Condition.of(matrix, factor);
    int total = firstContactCondition;
    for (int c : contactCondition) {
      total = Math.max(total, c + 1);
    }
    this.given = new double[total];
    for (int c = 0; c < firstContactCondition; c++) {
      given[c] = equations.given.get(c);
    }
    this.probe = probe();
  }

  private Betti probe() {
    double[] p = Betti.forces(equations.unknowns(), equations.reach());
    Refining one = new Refining(this, p, new double[given.length], null);
    while (one.wants()) {
      one.take(factor.solve(one.rest()));
    }
    return new Betti(p, one.displacements(), elimination.conditionForces(one.lacking()));
  }

  /** The factorised system, or the part of the structure that is loose. */
  sealed interface Made permits Ready, Refused {}

  record Ready(GlobalSystem system) implements Made {}

  record Refused(Loose loose) implements Made {}

  static Made of(Equations equations) {
    return make(equations, null);
  }

  /** The system of equations that differ from another system's in element stiffness only. */
  static Made again(Equations equations, GlobalSystem like) {
    return make(equations, like);
  }

  private static Made make(Equations equations, GlobalSystem like) {
    List<Element> elements = new ArrayList<>(equations.elements);
    List<LinearForm> conditions = new ArrayList<>(equations.conditions);
    int[] contactCondition = new int[equations.contacts.size()];
    for (int c = 0; c < contactCondition.length; c++) {
      Contact contact = equations.contacts.get(c);
      if (contact.isRigid()) {
        contactCondition[c] = conditions.size();
        conditions.add(contact.gap());
      } else {
        contactCondition[c] = -1;
        elements.add(new SpringElement(contact.part(), contact.gap(), contact.stiffness()));
      }
    }
    Elimination elimination =
        like != null
            ? like.elimination
            : new Elimination(
                equations.unknowns(), equations.absentFlags(), conditions, equations.reach());
    SparseSymmetric matrix = Assembling.matrix(elements, elimination);
    LdlPattern pattern =
        like != null && like.factor.pattern().fits(matrix)
            ? like.factor.pattern()
            : LdlPattern.of(matrix, MinimumDegree.order(matrix, equations.groups(elimination)));
    Factorisation factorisation = LdlFactor.of(matrix, pattern);
    if (factorisation instanceof Factorisation.Singular singular) {
      double[] motion = elimination.expand(singular.direction(), null);
      return new Refused(LooseMotion.name(equations, motion, "nothing holds"));
    }
    GlobalSystem system =
        new GlobalSystem(
            equations, elements, contactCondition, elimination, matrix, (LdlFactor) factorisation);
    return system.judged();
  }

  private Made judged() {
    if (!(condition.number() <= CONDITION_LIMIT)) {
      double[] motion = elimination.expand(condition.weakest(), null);
      return new Refused(LooseMotion.name(equations, motion, "hardly anything holds"));
    }
    if (elimination.contradiction(given) > 1e-9) {
      return new Refused(
          new Loose(
              "supports",
              "prescribed",
              "prescribed displacements contradict rigid ties or other supports; remove one"));
    }
    return new Ready(this);
  }

  Equations equations() {
    return equations;
  }

  Elimination elimination() {
    return elimination;
  }

  List<Element> elements() {
    return elements;
  }

  /** The assembled matrix of the reduced unknowns, contacts closed. */
  public SparseSymmetric matrix() {
    return matrix;
  }

  LdlFactor factor() {
    return factor;
  }

  /** Estimated condition number with a unit diagonal. */
  public double conditionNumber() {
    return condition.number();
  }

  /** Number of contacts. */
  int contacts() {
    return contactCondition.length;
  }

  /** The motion when one condition's given value grows by one, contacts closed. */
  double[] movedCondition(int number) {
    double[] values = unit(number);
    return moved(factor.solve(resisting(values)), values);
  }

  /** The same of the first {@code count} conditions, to the bit, in less time. */
  double[][] movedConditions(int count) {
    double[][] sides = new double[count][];
    for (int c = 0; c < count; c++) {
      sides[c] = resisting(unit(c));
    }
    double[][] moved = factor.solveAll(sides);
    for (int c = 0; c < count; c++) {
      moved[c] = moved(moved[c], unit(c));
    }
    return moved;
  }

  private double[] unit(int condition) {
    double[] values = new double[given.length];
    values[condition] = 1;
    return values;
  }

  private double[] resisting(double[] values) {
    double[] u = elimination.expand(new double[elimination.reducedSize()], values);
    return elimination.gather(internal(u));
  }

  private double[] moved(double[] reduced, double[] values) {
    for (int r = 0; r < reduced.length; r++) {
      reduced[r] = -reduced[r];
    }
    return elimination.expand(reduced, values);
  }

  /** Force of a closed contact in a motion that no load causes. */
  double contactForceAt(double[] closed, int contact) {
    double[] lacking = lacking(closed, new double[closed.length]);
    int own = contactCondition[contact];
    if (own >= 0) {
      return elimination.conditionForces(lacking)[own];
    }
    Contact elastic = equations.contacts.get(contact);
    return -elastic.stiffness() * elastic.gap().at(closed);
  }

  private double[] reduced(double[] u) {
    double[] reduced = new double[elimination.reducedSize()];
    for (int r = 0; r < reduced.length; r++) {
      reduced[r] = u[elimination.unknownOf(r)];
    }
    return reduced;
  }

  /**
   * Displacements of all unknowns and the forces of conditions and contacts; how well they satisfy
   * the equations, and Betti's theorem together with forces of no meaning.
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Solved(
      double[] u,
      double[] conditionForce,
      double[] contactForce,
      double residual,
      double reciprocity) {}

  /**
   * Solves with all contacts closed but their grounds moved.
   *
   * @param f forces on all unknowns
   * @param withGiven whether prescribed displacements act
   * @param opening the motion of each contact's ground along its gap, or null for none
   */
  Solved solve(double[] f, boolean withGiven, double[] opening) {
    return solve(f, withGiven, opening, null);
  }

  /**
   * The same, begun at displacements that are known to be near; whatever they are, the answer is
   * refined until its own residual is small enough.
   *
   * @param near displacements of all unknowns, or null for none
   */
  Solved solve(double[] f, boolean withGiven, double[] opening, double[] near) {
    Refining one = new Refining(this, f, start(withGiven), opening);
    if (near != null) {
      one.take(reduced(near));
    }
    while (one.wants()) {
      one.take(factor.solve(one.rest()));
    }
    return solved(one);
  }

  /**
   * Solves for many forces with all contacts closed; the answers are those of {@link #solve} to the
   * bit.
   */
  List<Solved> solveAll(List<double[]> forces, boolean withGiven) {
    List<Refining> all = new ArrayList<>();
    for (double[] f : forces) {
      all.add(new Refining(this, f, start(withGiven), null));
    }
    while (true) {
      List<Refining> wanting = all.stream().filter(Refining::wants).toList();
      if (wanting.isEmpty()) {
        return all.stream().map(this::solved).toList();
      }
      double[][] rests = wanting.stream().map(Refining::rest).toArray(double[][]::new);
      Refining.takeAll(this, wanting, factor.solveAll(rests));
    }
  }

  private double[] start(boolean withGiven) {
    return withGiven ? given.clone() : new double[given.length];
  }

  private Solved solved(Refining end) {
    double[] u = end.displacements();
    double[] force = elimination.conditionForces(end.lacking());
    double[] contact = new double[contactCondition.length];
    for (int c = 0; c < contact.length; c++) {
      if (contactCondition[c] >= 0) {
        contact[c] = force[contactCondition[c]];
      } else {
        Contact elastic = equations.contacts.get(c);
        contact[c] = elastic.stiffness() * (end.ground(c) - elastic.gap().at(u));
      }
    }
    double reciprocity = probe.error(end.acting(), end.values(), u);
    return new Solved(
        u, Arrays.copyOf(force, firstContactCondition), contact, end.residual(), reciprocity);
  }

  /** Forces minus what the elements call for at displacements {@code u}. */
  double[] lacking(double[] u, double[] f) {
    return Assembling.less(f, elements, u);
  }

  /** Forces that the elements call for at displacements {@code u}. */
  double[] internal(double[] u) {
    return Assembling.forces(elements, u);
  }

  /** The condition that a rigid contact is; negative for an elastic one. */
  int conditionOf(int contact) {
    return contactCondition[contact];
  }

  /** The largest of the forces on single unknowns; moments count at the characteristic length. */
  double size(double[] forces) {
    double force = 0;
    double moment = 0;
    for (int i = 0; i < forces.length; i += 6) {
      for (int d = i; d < i + 3; d++) {
        force = larger(force, Math.abs(forces[d]));
        moment = larger(moment, Math.abs(forces[d + 3]));
      }
    }
    return larger(force, moment / equations.reach());
  }

  /** The same of forces gathered on the reduced unknowns. */
  double reducedSize(double[] reduced) {
    double largest = 0;
    for (int r = 0; r < reduced.length; r++) {
      largest = larger(largest, Math.abs(inForce[r] * reduced[r]));
    }
    return largest;
  }

  /** As {@link Math#max}, but quicker where numbers are ordinary; once not a number, always so. */
  private static double larger(double most, double next) {
    if (next <= most) {
      return most;
    }
    return Double.isNaN(most) ? most : next;
  }
}
