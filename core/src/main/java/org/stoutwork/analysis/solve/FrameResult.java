package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.model.Vec3;

/** Displacements, reactions and member forces of one combination. Immutable. */
public final class FrameResult implements Outcome, HoldingForces {
  private final FrameSolver.Layout layout;
  private final String name;
  private final Loading loading;
  private final GlobalSystem.Solved solved;
  private final boolean[] open;
  private final double[] gap;
  private final Equations equations;
  private final double equilibriumError;

  FrameResult(PreparedFrame frame, String name, Loading loading, ContactSearch.Settled settled) {
    this(frame.layout(), name, loading, settled, List.of());
  }

  /** A result whose equilibrium holds only with some further forces. */
  FrameResult(
      FrameSolver.Layout layout,
      String name,
      Loading loading,
      ContactSearch.Settled settled,
      List<Applied> further) {
    this.layout = layout;
    this.name = name;
    this.loading = loading;
    this.solved = settled.solved();
    this.open = settled.open();
    this.gap = settled.gap();
    this.equations = layout.equations;
    this.equilibriumError = balance(further);
  }

  private double balance(List<Applied> further) {
    Equilibrium sum =
        new Equilibrium(layout.centre, layout.reach).addAll(loading.applied()).addAll(further);
    layout
        .model
        .supports()
        .keySet()
        .forEach(
            node -> {
              double[] r = reaction(node);
              sum.add(layout.model.nodes().get(node), Vec3.of(r, 0), Vec3.of(r, 3));
            });
    layout.attached.forEach(a -> sum.addAll(a.reactions(this)));
    return sum.error();
  }

  /** Name of the load case or combination. */
  public String name() {
    return name;
  }

  /** What was joined to the frame, by its number among the attachments. */
  Attached attached(int index) {
    return layout.attached.get(index);
  }

  private int vertex(String node) {
    Integer vertex = layout.vertices.get(node);
    if (vertex == null) {
      throw new IllegalArgumentException(
          "there is no node '" + node + "'; known are " + layout.vertices.keySet());
    }
    return vertex;
  }

  /** Displacement of a node, ux uy uz (mm) rx ry rz (rad), global axes. */
  public double[] displacement(String node) {
    double[] six = new double[6];
    System.arraycopy(solved.u(), 6 * vertex(node), six, 0, 6);
    return six;
  }

  @Override
  public double condition(int number) {
    return solved.conditionForce()[number];
  }

  @Override
  public double contact(int number) {
    return contactForce(number);
  }

  @Override
  public boolean isOpen(int contact) {
    return open[contact];
  }

  /** Displacements of all unknowns, 6 × vertex + direction; attachments read theirs from it. */
  @Override
  public double[] displacements() {
    return solved.u().clone();
  }

  /** Force (N) and moment (N mm) by the support on the structure, global axes. */
  public double[] reaction(String node) {
    vertex(node);
    double[] six = new double[6];
    for (FrameSolver.Grip grip : layout.gripsOf(node)) {
      six[grip.direction().index()] += force(grip);
    }
    return six;
  }

  private double force(FrameSolver.Grip grip) {
    return switch (grip.kind()) {
      case CONDITION -> solved.conditionForce()[grip.number()];
      case SPRING -> -grip.stiffness() * solved.u()[6 * grip.vertex() + grip.direction().index()];
      case CONTACT -> contactForce(grip.number());
    };
  }

  Loading loading() {
    return loading;
  }

  boolean[] open() {
    return open.clone();
  }

  double[] unknowns() {
    return solved.u();
  }

  private double contactForce(int contact) {
    return open[contact] ? 0 : solved.contactForce()[contact];
  }

  /** End forces, internal forces and deflections of a member. */
  public MemberResult member(String member) {
    Beam beam = layout.beams.get(member);
    if (beam == null) {
      throw new IllegalArgumentException(
          "there is no member '" + member + "'; known are " + layout.beams.keySet());
    }
    double[] own = new double[12];
    for (int i = 0; i < 12; i++) {
      own[i] = solved.u()[beam.unknowns()[i]];
    }
    return new MemberResult(beam.state(own, loading.span(beam)));
  }

  /** The state of every one-way support and contact, in the order of the model. */
  public List<ContactState> contacts() {
    List<ContactState> states = new ArrayList<>();
    for (int c = 0; c < open.length; c++) {
      states.add(
          new ContactState(
              equations.contacts.get(c).part(), !open[c], contactForce(c), open[c] ? gap[c] : 0));
    }
    return states;
  }

  /** The state of the (first) one-way support of a node or contact of a tie. */
  public ContactState contact(String part) {
    return contacts().stream()
        .filter(state -> state.part().equals(part))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("'" + part + "' has no one-way support or contact"));
  }

  /**
   * Applied loads plus reactions, forces and moments, that remain unbalanced, relative to the sum
   * of their sizes. The loads are summed without any stiffness, so this checks the whole analysis.
   */
  public double equilibriumError() {
    return equilibriumError;
  }

  /** Largest unbalanced nodal force relative to the largest nodal load. */
  public double residual() {
    return solved.residual();
  }

  /**
   * The work of the loads on the motions of some probing forces, less the work of those on the
   * motions of the loads, relative to the sizes of both: by Betti's theorem nothing.
   */
  public double reciprocityError() {
    return solved.reciprocity();
  }
}
