package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;

/**
 * A frame whose equations are factorised: load cases and combinations are solved one after the
 * other or by several threads at once. Immutable.
 *
 * <p>Prescribed displacements of supports belong to the model: they act once in every solution,
 * whatever the factors of a combination.
 */
public final class PreparedFrame implements Preparation {
  private final FrameSolver.Layout layout;
  private final GlobalSystem system;
  private final ContactSearch search;
  private final List<Attachment> attachments;

  PreparedFrame(FrameSolver.Layout layout, GlobalSystem system, List<Attachment> attachments) {
    this.layout = layout;
    this.system = system;
    this.attachments = attachments;
    this.search = new ContactSearch(system);
  }

  /** The model it was made from. */
  public FrameModel model() {
    return layout.model;
  }

  /** Estimated condition number of the equations, diagonal scaled to one. */
  public double conditionNumber() {
    return system.conditionNumber();
  }

  /** The equations. */
  public GlobalSystem system() {
    return system;
  }

  FrameSolver.Layout layout() {
    return layout;
  }

  List<Attachment> attachments() {
    return attachments;
  }

  /** Solves one load case. */
  public Outcome solve(LoadCase loadCase) {
    return solve(Combination.of(loadCase));
  }

  /**
   * Solves a combination; contacts find the state that belongs to the loads acting together.
   *
   * @throws IllegalArgumentException when a load names an unknown node or member, or lies outside
   *     its member
   */
  public Outcome solve(Combination combination) {
    Loading loading = new Loading(layout, combination);
    return outcome(combination.name(), loading, search.find(loading.forces()));
  }

  private Outcome outcome(String name, Loading loading, ContactSearch.Found found) {
    if (found instanceof ContactSearch.Lifting lifting) {
      return lifting.loose();
    }
    if (found instanceof ContactSearch.Wandering wandering) {
      return wandering.unsettled();
    }
    return new FrameResult(this, name, loading, (ContactSearch.Settled) found);
  }

  /**
   * Solves load cases side by side with every one-way contact closed, even where it would have to
   * pull. Such results may be added up; see {@link #together}.
   *
   * @throws IllegalArgumentException as {@link #solve(Combination)} does
   */
  public List<FrameResult> held(List<LoadCase> cases) {
    List<Loading> loadings = new ArrayList<>();
    for (LoadCase loadCase : cases) {
      loadings.add(new Loading(layout, Combination.of(loadCase)));
    }
    List<GlobalSystem.Solved> closed =
        system.solveAll(loadings.stream().map(Loading::forces).toList(), true);
    List<FrameResult> results = new ArrayList<>();
    for (int c = 0; c < cases.size(); c++) {
      String name = cases.get(c).name();
      results.add(new FrameResult(this, name, loadings.get(c), search.held(closed.get(c))));
    }
    return results;
  }

  /** Solves one load case as {@link #held(List)} does. */
  public FrameResult held(LoadCase loadCase) {
    return held(List.of(loadCase)).get(0);
  }

  /**
   * What {@link #solve(Combination)} answers to a combination, from the results of its cases: they
   * are added up, contacts that would pull are opened, and the sum is refined like any solution.
   *
   * @param name of the combination
   * @param parts results of {@link #held} of this frame, each with its factor
   */
  public Outcome together(String name, Map<FrameResult, Double> parts) {
    Loading loading = Loading.sum(layout, parts);
    return outcome(name, loading, search.find(loading.forces(), closed(loading, parts)));
  }

  /** The same with every contact closed, even where it would have to pull. */
  public FrameResult heldTogether(String name, Map<FrameResult, Double> parts) {
    Loading loading = Loading.sum(layout, parts);
    return new FrameResult(this, name, loading, search.held(closed(loading, parts)));
  }

  private GlobalSystem.Solved closed(Loading loading, Map<FrameResult, Double> parts) {
    return system.solve(loading.forces(), true, null, sum(parts));
  }

  private double[] sum(Map<FrameResult, Double> parts) {
    double[] sum = new double[layout.equations.unknowns()];
    parts.forEach(
        (result, factor) -> {
          double[] u = result.unknowns();
          for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * u[i];
          }
        });
    return sum;
  }

  /**
   * Solves many load cases side by side; each outcome is that of {@link #solve(LoadCase)} to the
   * bit, at a fraction of the time.
   *
   * @throws IllegalArgumentException as {@link #solve(Combination)} does
   */
  public List<Outcome> solveAll(List<LoadCase> cases) {
    List<Loading> loadings = new ArrayList<>();
    for (LoadCase loadCase : cases) {
      loadings.add(new Loading(layout, Combination.of(loadCase)));
    }
    List<GlobalSystem.Solved> closed =
        system.solveAll(loadings.stream().map(Loading::forces).toList(), true);
    List<Outcome> outcomes = new ArrayList<>();
    for (int c = 0; c < cases.size(); c++) {
      Loading loading = loadings.get(c);
      outcomes.add(
          outcome(cases.get(c).name(), loading, search.find(loading.forces(), closed.get(c))));
    }
    return outcomes;
  }

  /** The influence of any load on a response, all one-way contacts closed. */
  public Influence influence(Response response) {
    return Influence.of(this, response, new boolean[system.contacts()]);
  }

  /** The influence of any load on a response, contacts as a result found them. */
  public Influence influence(Response response, FrameResult like) {
    return Influence.of(this, response, like.open());
  }

  /** Solves for nodal forces with contacts in a given state. */
  ContactSearch.Settled frozen(double[] forces, boolean[] open) {
    if (search.frozen(forces, open) instanceof ContactSearch.Settled settled) {
      return settled;
    }
    throw new IllegalStateException("the structure is loose with these contacts open");
  }

  /** The motion when one support is moved by one unit, contacts in a given state. */
  double[] settled(FrameSolver.Grip grip, boolean[] open) {
    double[] none = new double[layout.equations.unknowns()];
    double[] moved = new double[none.length];
    int at = 6 * layout.vertices.get(grip.node()) + grip.direction().index();
    switch (grip.kind()) {
      case CONDITION -> {
        double[] alone = system.movedCondition(grip.number());
        return search.corrected(alone, open);
      }
      case SPRING -> moved[at] = grip.stiffness();
      case CONTACT -> {
        return search.movedContact(grip.number(), open);
      }
    }
    return frozen(moved, open).solved().u();
  }

  /**
   * The same frame with other end conditions of one member. Everything that does not depend on them
   * is taken over, so this costs a numeric factorisation only.
   */
  public Preparation withSprings(String member, MemberEnd start, MemberEnd end) {
    Member old = layout.model.members().get(member);
    if (old == null) {
      throw new IllegalArgumentException("there is no member '" + member + "'");
    }
    Map<String, Member> changed = new LinkedHashMap<>(layout.model.members());
    changed.put(
        member,
        new Member(
            member, old.from(), old.to(), old.section(), old.material(), old.roll(), start, end));
    return withMembers(changed);
  }

  /**
   * The same frame with other members of the same names between the same nodes, other joints for
   * example; costs as {@link #withSprings}.
   */
  public Preparation withMembers(Map<String, Member> changed) {
    return changed(layout.model.withMembers(changed));
  }

  /** The same frame with other properties of one named section; costs as {@link #withSprings}. */
  public Preparation withSection(String name, CrossSection section) {
    return changed(layout.model.withSection(name, section));
  }

  private Preparation changed(FrameModel model) {
    FrameSolver.Layout other = layout.changed(model);
    Loose loose = FrameSolver.looseMember(other);
    if (loose != null) {
      return loose;
    }
    GlobalSystem.Made made = GlobalSystem.again(other.equations, system);
    if (made instanceof GlobalSystem.Refused refused) {
      return refused.loose();
    }
    return new PreparedFrame(other, ((GlobalSystem.Ready) made).system(), attachments);
  }
}
