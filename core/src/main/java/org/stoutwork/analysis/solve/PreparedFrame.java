package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

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
    ContactSearch.Found found = search.find(loading.forces());
    if (found instanceof ContactSearch.Lifting lifting) {
      return lifting.loose();
    }
    return new FrameResult(this, combination.name(), loading, (ContactSearch.Settled) found);
  }
}
