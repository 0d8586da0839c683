package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.PanelTie;
import org.stoutwork.analysis.model.Vec3;

/** A reduced panel within the equations of a frame. */
final class CondensedAttached implements Attached {
  private final CondensedPanel panel;
  private final int[] unknowns;
  private final Map<PanelTie, Map<Direction, PanelGrip>> grips = new LinkedHashMap<>();

  CondensedAttached(CondensedPanel panel, int[] unknowns) {
    this.panel = panel;
    this.unknowns = unknowns;
  }

  /** Joins one place of the panel to a node, by an arm from the node. */
  void tie(Equations equations, PanelTie tie, int place, int node, Vec3 arm) {
    Map<Direction, PanelGrip> made = new EnumMap<>(Direction.class);
    for (Map.Entry<Direction, Link> link : tie.links().entrySet()) {
      int d = link.getKey().index();
      LinearForm form = LinearForm.of(6 * place + d).plus(-1, LinearForm.onArm(node, arm, d));
      String part = panel.panel().name() + " on " + tie.node();
      made.put(link.getKey(), PanelGrip.put(equations, part, form, link.getValue()));
    }
    grips.put(tie, made);
  }

  @Override
  public List<Applied> apply(Load load, double factor, double[] f) {
    CondensedPanel.Reduced reduced = panel.reduced(load);
    List<Applied> applied = new ArrayList<>();
    for (Applied a : reduced.applied()) {
      applied.add(new Applied(a.at(), a.force().times(factor), a.moment().times(factor)));
    }
    for (int k = 0; k < unknowns.length; k++) {
      f[unknowns[k]] += factor * reduced.atTies()[k];
    }
    return applied;
  }

  /** Displacements of the kept unknowns. */
  double[] ofTies(double[] u) {
    double[] own = new double[unknowns.length];
    for (int k = 0; k < own.length; k++) {
      own[k] = u[unknowns[k]];
    }
    return own;
  }

  /** Forces of the ties on the panel. */
  List<PanelTieForce> tieForces(HoldingForces forces) {
    List<PanelTieForce> list = new ArrayList<>();
    grips.forEach(
        (tie, made) ->
            made.forEach(
                (d, grip) ->
                    list.add(new PanelTieForce(tie, d, grip.force(forces), grip.isOpen(forces)))));
    return list;
  }
}
