package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.element.PlateShell;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.PanelTie;
import org.stoutwork.analysis.model.Vec3;

/**
 * A panel of one mesh within the equations of a frame, six unknowns a node. A panel that nothing
 * ties in its own plane, and whose normal is a global axis, keeps only the three of bending.
 */
final class PanelAttached implements Attached {
  private static final double WEIGHT = Loading.GRAVITY * 1e-6;

  private final Panel panel;
  private final PanelGrid grid;
  private final PanelElements elements;
  private final PanelHolds holds;
  private final Map<String, Vec3> nodes;
  private final int[] vertex;
  private final Vec3[] places;
  private final List<PanelGrip> lineGrips = new ArrayList<>();
  private final List<Held> held = new ArrayList<>();
  private final Map<PanelTie, Map<Direction, PanelGrip>> tieGrips = new LinkedHashMap<>();

  /** One hold of the ground: its place, the axis of its force or moment, and its grip. */
  private record Held(Vec3 at, Vec3 axis, boolean turning, PanelGrip grip) {}

  /** Puts the panel into the equations. */
  PanelAttached(
      PanelGrid grid, Map<String, Vec3> nodes, Equations equations, Map<String, Integer> vertices) {
    this(grid, nodes, equations);
    for (PanelTie tie : panel.ties()) {
      Integer node = vertices.get(tie.node());
      if (node == null) {
        throw new IllegalArgumentException(
            "panel '" + panel.name() + "' is tied to the unknown node '" + tie.node() + "'");
      }
      tieGrips.put(tie, addTie(equations, tie, node));
    }
  }

  private PanelAttached(PanelGrid grid, Map<String, Vec3> nodes, Equations equations) {
    this.grid = grid;
    this.panel = grid.panel();
    this.elements = new PanelElements(grid);
    this.holds = new PanelHolds(grid);
    this.nodes = nodes;
    this.vertex = new int[grid.nodes()];
    this.places = new Vec3[grid.nodes()];
    equations.reach(Math.max(equations.reach(), Math.hypot(panel.length(), panel.width()) / 2));
    addVertices(equations);
    addElements(equations);
    addLines(equations);
  }

  /** The panel by itself, its ties left open but what they need kept among the unknowns. */
  static PanelAttached untied(PanelGrid grid, Equations equations) {
    return new PanelAttached(grid, Map.of(), equations);
  }

  /** The vertex where a tie acts. */
  int vertexAt(PanelTie tie) {
    return vertex[nodeAt(tie.at().x(), tie.at().y())];
  }

  PanelGrid grid() {
    return grid;
  }

  PanelElements elements() {
    return elements;
  }

  private void addVertices(Equations equations) {
    int normal = bendingOnly();
    for (int i = 0; i < grid.nx(); i++) {
      for (int j = 0; j < grid.ny(); j++) {
        int n = grid.node(i, j);
        if (n >= 0) {
          places[n] = panel.place().inSpace(grid.x(i), grid.y(j));
          vertex[n] =
              equations.vertex(
                  panel.name() + " at (" + tenths(grid.x(i)) + ", " + tenths(grid.y(j)) + ")");
          for (int d = 0; normal >= 0 && d < 3; d++) {
            equations.absent(6 * vertex[n] + (d == normal ? 3 + d : d));
          }
        }
      }
    }
  }

  /** The global axis along the normal when only bending is wanted, else -1. */
  private int bendingOnly() {
    double[] n = panel.place().normal().toArray();
    int axis = -1;
    for (int d = 0; d < 3; d++) {
      axis = Math.abs(n[d]) > 1 - 1e-12 ? d : axis;
    }
    for (PanelTie tie : panel.ties()) {
      for (Direction direction : tie.links().keySet()) {
        boolean alongNormal = direction.index() % 3 == axis;
        if (direction.isRotation() == alongNormal) {
          return -1;
        }
      }
    }
    return axis;
  }

  private void addElements(Equations equations) {
    Map<List<Object>, PlateShell.Cell> made = new HashMap<>();
    for (int i = 0; i + 1 < grid.nx(); i++) {
      for (int j = 0; j + 1 < grid.ny(); j++) {
        if (grid.has(i, j)) {
          double a = grid.x(i + 1) - grid.x(i);
          double b = grid.y(j + 1) - grid.y(j);
          PanelSection section = PanelElements.effective(grid, grid.section(i, j));
          PlateShell.Cell k =
              made.computeIfAbsent(
                  List.of(a, b, section), key -> new PlateShell.Cell(a, b, section, panel.place()));
          int[] corners = grid.corners(i, j);
          for (int n = 0; n < 4; n++) {
            corners[n] = vertex[corners[n]];
          }
          equations.add(new PlateShell(panel.name(), corners, k));
        }
      }
    }
  }

  private static LinearForm form(int at, Vec3 direction) {
    return new LinearForm(Map.of(at, direction.x(), at + 1, direction.y(), at + 2, direction.z()));
  }

  private void addLines(Equations equations) {
    PanelPlace place = panel.place();
    for (int n = 0; n < grid.nodes(); n++) {
      if (holds.fixed(3 * n + 1)) {
        holdRotation(equations, n, place.along());
      }
      if (holds.fixed(3 * n + 2)) {
        holdRotation(equations, n, place.across());
      }
    }
    for (PanelHolds.Hold hold : holds.holds()) {
      LinearForm form = form(6 * vertex[hold.node()], place.normal());
      PanelGrip grip = PanelGrip.put(equations, panel.name(), form, hold.link());
      lineGrips.add(grip);
      held.add(new Held(places[hold.node()], place.normal(), false, grip));
    }
  }

  private void holdRotation(Equations equations, int node, Vec3 axis) {
    LinearForm form = form(6 * vertex[node] + 3, axis);
    PanelGrip grip = PanelGrip.put(equations, panel.name(), form, Link.RIGID);
    held.add(new Held(places[node], axis, true, grip));
  }

  private Map<Direction, PanelGrip> addTie(Equations equations, PanelTie tie, int node) {
    int at = nodeAt(tie.at().x(), tie.at().y());
    Vec3 arm = panel.place().inSpace(tie.at().x(), tie.at().y()).minus(nodes.get(tie.node()));
    Map<Direction, PanelGrip> grips = new LinkedHashMap<>();
    for (Map.Entry<Direction, Link> link : tie.links().entrySet()) {
      int d = link.getKey().index();
      LinearForm form = LinearForm.of(6 * vertex[at] + d).plus(-1, LinearForm.onArm(node, arm, d));
      String part = panel.name() + " on " + tie.node();
      grips.put(link.getKey(), PanelGrip.put(equations, part, form, link.getValue()));
    }
    return grips;
  }

  private int nodeAt(double x, double y) {
    int node = grid.node(grid.lineX(x), grid.lineY(y));
    if (node < 0) {
      throw new IllegalArgumentException(
          "panel '"
              + panel.name()
              + "' has an opening at ("
              + x
              + ", "
              + y
              + "), where it is tied");
    }
    return node;
  }

  @Override
  public List<Applied> apply(Load load, double factor, double[] f) {
    Vec3 direction = panel.place().normal();
    double[] forces;
    if (load instanceof PanelLoad own && own.panel().equals(panel.name())) {
      forces = PanelLoads.forces(grid, List.of(own));
    } else if (load instanceof Load.SelfWeight weight) {
      forces = PanelLoads.weights(grid, WEIGHT);
      direction = weight.direction();
    } else {
      return List.of();
    }
    List<Applied> applied = new ArrayList<>();
    for (int n = 0; n < forces.length; n++) {
      if (forces[n] != 0) {
        Vec3 force = direction.times(factor * forces[n]);
        f[6 * vertex[n]] += force.x();
        f[6 * vertex[n] + 1] += force.y();
        f[6 * vertex[n] + 2] += force.z();
        applied.add(new Applied(places[n], force, Vec3.ZERO));
      }
    }
    return applied;
  }

  @Override
  public List<Applied> reactions(HoldingForces forces) {
    List<Applied> reactions = new ArrayList<>();
    for (Held h : held) {
      Vec3 force = h.axis().times(h.grip().force(forces));
      reactions.add(
          h.turning()
              ? new Applied(h.at(), Vec3.ZERO, force)
              : new Applied(h.at(), force, Vec3.ZERO));
    }
    return reactions;
  }

  @Override
  public Optional<LinearForm> form(Response.OnPanel response) {
    if (!response.panel().equals(panel.name())) {
      return Optional.empty();
    }
    double[] factors =
        PanelFunctional.of(grid, elements, response.quantity(), response.x(), response.y());
    Map<Integer, Double> terms = new HashMap<>();
    for (int n = 0; n < vertex.length; n++) {
      add(terms, 6 * vertex[n], panel.place().normal(), factors[3 * n]);
      add(terms, 6 * vertex[n] + 3, panel.place().along(), factors[3 * n + 1]);
      add(terms, 6 * vertex[n] + 3, panel.place().across(), factors[3 * n + 2]);
    }
    return Optional.of(new LinearForm(terms));
  }

  private static void add(Map<Integer, Double> terms, int at, Vec3 direction, double factor) {
    if (factor != 0) {
      terms.merge(at, factor * direction.x(), Double::sum);
      terms.merge(at + 1, factor * direction.y(), Double::sum);
      terms.merge(at + 2, factor * direction.z(), Double::sum);
    }
  }

  /** w, θx, θy by node from the displacements of the whole. */
  double[] local(double[] u) {
    PanelPlace place = panel.place();
    double[] local = new double[3 * vertex.length];
    for (int n = 0; n < vertex.length; n++) {
      Vec3 rotation = Vec3.of(u, 6 * vertex[n] + 3);
      local[3 * n] = Vec3.of(u, 6 * vertex[n]).dot(place.normal());
      local[3 * n + 1] = rotation.dot(place.along());
      local[3 * n + 2] = rotation.dot(place.across());
    }
    return local;
  }

  /** Deflection along the normal at one place as a sum of the unknowns. */
  LinearForm deflection(double x, double y) {
    return form(new Response.OnPanel(panel.name(), x, y, PanelQuantity.W)).orElseThrow();
  }

  /** Forces of the supported lines. */
  List<PanelReaction> lineReactions(HoldingForces forces) {
    double[] reactions = new double[lineGrips.size()];
    boolean[] open = new boolean[reactions.length];
    for (int h = 0; h < reactions.length; h++) {
      reactions[h] = lineGrips.get(h).force(forces);
      open[h] = lineGrips.get(h).isOpen(forces);
    }
    return PanelGround.byLine(panel, holds, reactions, open);
  }

  /** Forces of the ties. */
  List<PanelTieForce> tieForces(HoldingForces forces) {
    List<PanelTieForce> list = new ArrayList<>();
    tieGrips.forEach(
        (tie, grips) ->
            grips.forEach(
                (d, grip) ->
                    list.add(new PanelTieForce(tie, d, grip.force(forces), grip.isOpen(forces)))));
    return list;
  }

  private static double tenths(double mm) {
    return Math.round(10 * mm) / 10.0;
  }
}
