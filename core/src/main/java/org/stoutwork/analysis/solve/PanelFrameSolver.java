package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLoad;

/**
 * Solves a frame with panels tied to it: once with the coarser and once with the finer mesh of
 * every panel. Results of the frame are those of the finer mesh; deflections and moments at
 * reported places of panels are extrapolated from both.
 */
public final class PanelFrameSolver {
  private final FrameModel model;
  private final List<Panel> panels;
  private final Mesh coarse;
  private final Mesh fine;

  private record Mesh(PreparedFrame frame) {}

  private record Prepared(Mesh mesh, Loose loose) {}

  private PanelFrameSolver(FrameModel model, List<Panel> panels, Mesh coarse, Mesh fine) {
    this.model = model;
    this.panels = panels;
    this.coarse = coarse;
    this.fine = fine;
  }

  /** What comes of preparing: a solver, or what is loose. */
  public sealed interface Answer permits Ready, Refused {
    /** The solver. Throws {@link IllegalStateException} with the reason when there is none. */
    default PanelFrameSolver solver() {
      if (this instanceof Ready ready) {
        return ready.ready();
      }
      throw new IllegalStateException(((Refused) this).loose().message());
    }
  }

  /**
   * Prepared.
   *
   * @param ready the solver
   */
  public record Ready(PanelFrameSolver ready) implements Answer {}

  /**
   * Refused.
   *
   * @param loose what can move without resistance
   */
  public record Refused(Loose loose) implements Answer {}

  /**
   * Prepares both meshes.
   *
   * @param expected loads for which the meshes are made finer where they stand; other loads may be
   *     solved too
   * @throws IllegalArgumentException when two panels share a name or a tie names an unknown node
   */
  public static Answer prepare(
      FrameModel model, Collection<Panel> panels, Collection<LoadCase> expected) {
    List<Panel> list = List.copyOf(panels);
    long names = list.stream().map(Panel::name).distinct().count();
    if (names < list.size()) {
      throw new IllegalArgumentException("two panels have the same name; rename one");
    }
    List<PanelGrid> coarseGrids = new ArrayList<>();
    List<PanelGrid> fineGrids = new ArrayList<>();
    for (Panel panel : list) {
      List<PanelGrid> pair = PanelMesher.pair(panel, loadsOn(panel, expected));
      coarseGrids.add(pair.get(0));
      fineGrids.add(pair.get(1));
    }
    Prepared coarse = mesh(model, coarseGrids);
    if (coarse.loose() != null) {
      return new Refused(coarse.loose());
    }
    Prepared fine = mesh(model, fineGrids);
    if (fine.loose() != null) {
      return new Refused(fine.loose());
    }
    return new Ready(new PanelFrameSolver(model, list, coarse.mesh(), fine.mesh()));
  }

  private static List<PanelLoad> loadsOn(Panel panel, Collection<LoadCase> cases) {
    List<PanelLoad> loads = new ArrayList<>();
    for (LoadCase loadCase : cases) {
      for (Load load : loadCase.loads()) {
        if (load instanceof PanelLoad own && own.panel().equals(panel.name())) {
          loads.add(own);
        }
      }
    }
    return loads;
  }

  private static Prepared mesh(FrameModel model, List<PanelGrid> grids) {
    List<PanelAttachment> attachments = new ArrayList<>();
    for (PanelGrid grid : grids) {
      attachments.add(new PanelAttachment(grid, model.nodes()));
    }
    Preparation preparation = FrameSolver.prepare(model, attachments);
    if (preparation instanceof PreparedFrame frame) {
      return new Prepared(new Mesh(frame), null);
    }
    return new Prepared(null, (Loose) preparation);
  }

  /** The frame with the finer meshes, for everything else that a prepared frame can do. */
  public PreparedFrame frame() {
    return fine.frame();
  }

  /**
   * The frame with the coarser meshes: the other half of an extrapolation, fine + (fine - coarse) /
   * 3.
   */
  public PreparedFrame coarseFrame() {
    return coarse.frame();
  }

  /** The frame's model. */
  public FrameModel model() {
    return model;
  }

  /**
   * What comes of a combination.
   *
   * @param frame result of the frame, or why there is none
   * @param panels results by name; empty when there is none
   */
  public record Result(Outcome frame, Map<String, PanelResult> panels) {}

  /** Solves one load case. */
  public Result solve(LoadCase loadCase) {
    return solve(Combination.of(loadCase));
  }

  /**
   * Solves a combination.
   *
   * @throws IllegalArgumentException when a load names an unknown panel, node or member
   */
  public Result solve(Combination combination) {
    refuseUnknownPanels(combination);
    Outcome first = coarse.frame().solve(combination);
    Outcome second = fine.frame().solve(combination);
    if (first instanceof FrameResult before && second instanceof FrameResult after) {
      return new Result(second, panels(before, after));
    }
    return new Result(second instanceof FrameResult ? first : second, Map.of());
  }

  /**
   * What comes of a combination when axial forces work on the slopes of members.
   *
   * @param frame result of the frame, or why there is none
   * @param panels results by name; empty when there is none. Forces in the plane of a panel do not
   *     work on its slope
   */
  public record SecondOrderAnswer(SecondOrder.Answer frame, Map<String, PanelResult> panels) {}

  /**
   * Solves a combination to second order, on both meshes.
   *
   * @param pieces how many pieces each member is divided into, 1 or more
   * @throws IllegalArgumentException when a load names an unknown panel, node or member
   */
  public SecondOrderAnswer secondOrder(Combination combination, int pieces) {
    refuseUnknownPanels(combination);
    SecondOrder.Answer first = SecondOrder.solve(coarse.frame(), combination, pieces);
    SecondOrder.Answer second = SecondOrder.solve(fine.frame(), combination, pieces);
    if (first instanceof SecondOrderResult before && second instanceof SecondOrderResult after) {
      return new SecondOrderAnswer(second, panels(before.basis(), after.basis()));
    }
    return new SecondOrderAnswer(second instanceof SecondOrderResult ? first : second, Map.of());
  }

  private void refuseUnknownPanels(Combination combination) {
    for (LoadCase loadCase : combination.factors().keySet()) {
      for (Load load : loadCase.loads()) {
        if (load instanceof PanelLoad on
            && panels.stream().noneMatch(p -> p.name().equals(on.panel()))) {
          throw new IllegalArgumentException(
              "a load acts on the unknown panel '" + on.panel() + "'");
        }
      }
    }
  }

  private Map<String, PanelResult> panels(FrameResult before, FrameResult after) {
    Map<String, PanelResult> results = new LinkedHashMap<>();
    for (int p = 0; p < panels.size(); p++) {
      results.put(panels.get(p).name(), panel(p, before, after));
    }
    return results;
  }

  private PanelResult panel(int index, FrameResult before, FrameResult after) {
    Panel panel = panels.get(index);
    PanelAttached attachment = (PanelAttached) after.attached(index);
    PanelField high = field(attachment, after);
    PanelField low = field((PanelAttached) before.attached(index), before);
    PanelExtrapolation best = new PanelExtrapolation(low, high);
    List<PanelPointResult> report = best.report(panel.report());
    return new PanelResult(
        panel.name(),
        report,
        best.extreme(false),
        best.extreme(true),
        best.meshError(report),
        attachment.lineReactions(after),
        attachment.tieForces(after),
        after.equilibriumError(),
        after.residual(),
        high);
  }

  private static PanelField field(PanelAttached attachment, FrameResult result) {
    double[] local = attachment.local(result.displacements());
    return PanelRecovery.field(attachment.grid(), attachment.elements(), local);
  }
}
