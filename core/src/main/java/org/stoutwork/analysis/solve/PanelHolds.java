package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelSupport;

/** What the supports of a panel do to the unknowns of its grid: w, θx, θy of each node. */
final class PanelHolds {
  /** How one node of a supported line is held along the normal. */
  enum Kind {
    RIGID,
    ELASTIC,
    CONTACT,
    ELASTIC_CONTACT
  }

  /**
   * One node of a supported line.
   *
   * @param support index of the support
   * @param node its number in the grid
   * @param at place along the line, mm
   * @param reach length of line that belongs to the node, mm
   * @param stiffness N/mm, 0 where rigid
   */
  record Hold(int support, int node, double at, double reach, Kind kind, double stiffness) {
    /** The same hold as a link of a single node. */
    Link link() {
      return switch (kind) {
        case RIGID -> Link.RIGID;
        case ELASTIC -> Link.elastic(stiffness);
        case CONTACT -> Link.CONTACT;
        case ELASTIC_CONTACT -> Link.contact(stiffness);
      };
    }

    boolean oneWay() {
      return kind == Kind.CONTACT || kind == Kind.ELASTIC_CONTACT;
    }
  }

  private final PanelGrid grid;
  private final boolean[] fixed;
  private final List<Hold> holds = new ArrayList<>();

  PanelHolds(PanelGrid grid) {
    this.grid = grid;
    this.fixed = new boolean[3 * grid.nodes()];
    List<PanelSupport> supports = grid.panel().supports();
    Map<Integer, Hold> taken = new HashMap<>();
    // Rigid holds come first, so that a node on two lines is held by the stronger one.
    for (int pass = 0; pass < 2; pass++) {
      for (int s = 0; s < supports.size(); s++) {
        if (pass == 0) {
          holdSlopes(supports.get(s));
        }
        boolean rigid = supports.get(s).w().filter(Link.Rigid.class::isInstance).isPresent();
        if (rigid == (pass == 0) && supports.get(s).w().isPresent()) {
          holdDeflection(s, supports.get(s), taken);
        }
      }
    }
  }

  private void holdDeflection(int index, PanelSupport support, Map<Integer, Hold> taken) {
    Link link = support.w().orElseThrow();
    for (Hold h : nodesOf(index, support.line(), link)) {
      Hold before = taken.get(h.node());
      boolean both = before != null && !before.oneWay() && !h.oneWay();
      if (before == null || (both && before.kind() == Kind.ELASTIC)) {
        taken.put(h.node(), h);
        holds.add(h);
        if (h.kind() == Kind.RIGID) {
          fixed[3 * h.node()] = true;
        }
      }
    }
  }

  private void holdSlopes(PanelSupport support) {
    // A line x = const runs along y: the rotation that follows it is the one about x.
    int along = support.line().across() ? 1 : 2;
    for (Hold h : nodesOf(0, support.line(), Link.RIGID)) {
      if (support.slopeAlong()) {
        fixed[3 * h.node() + along] = true;
      }
      if (support.slopeAcross()) {
        fixed[3 * h.node() + 3 - along] = true;
      }
    }
  }

  private List<Hold> nodesOf(int index, PanelLine line, Link link) {
    List<Hold> found = new ArrayList<>();
    int fixedLine = line.across() ? grid.lineX(line.at()) : grid.lineY(line.at());
    int count = line.across() ? grid.ny() : grid.nx();
    double t = grid.tolerance();
    for (int k = 0; k < count; k++) {
      double at = line.across() ? grid.y(k) : grid.x(k);
      int node = line.across() ? grid.node(fixedLine, k) : grid.node(k, fixedLine);
      if (node < 0 || at < line.from() - t || at > line.to() + t) {
        continue;
      }
      double reach = 0;
      if (k > 0 && at > line.from() + t) {
        reach += (at - (line.across() ? grid.y(k - 1) : grid.x(k - 1))) / 2;
      }
      if (k + 1 < count && at < line.to() - t) {
        reach += ((line.across() ? grid.y(k + 1) : grid.x(k + 1)) - at) / 2;
      }
      found.add(hold(index, node, at, reach, link));
    }
    return found;
  }

  private static Hold hold(int index, int node, double at, double reach, Link link) {
    if (link instanceof Link.Elastic spring) {
      return new Hold(index, node, at, reach, Kind.ELASTIC, reach * spring.stiffness());
    }
    if (link instanceof Link.ElasticContact spring) {
      return new Hold(index, node, at, reach, Kind.ELASTIC_CONTACT, reach * spring.stiffness());
    }
    Kind kind = link instanceof Link.Contact ? Kind.CONTACT : Kind.RIGID;
    return new Hold(index, node, at, reach, kind, 0);
  }

  /** Nodes held along the normal, each once or with several springs. */
  List<Hold> holds() {
    return holds;
  }

  /** True for an unknown that the ground holds rigidly both ways. */
  boolean fixed(int unknown) {
    return fixed[unknown];
  }
}
