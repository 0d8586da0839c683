package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelPoint;
import org.stoutwork.analysis.model.PanelTie;
import org.stoutwork.analysis.model.Vec3;

/**
 * A panel reduced to the places where it is tied: factorised once on one mesh, then joined to any
 * number of frames at the cost of a small dense element (static condensation: R. J. Guyan, AIAA
 * Journal 3, 1965; exact for statics). Each load is solved once, whatever the frame.
 *
 * <p>The panel must be held by its ties alone. Any number of threads may use it.
 */
public final class CondensedPanel {
  private final Panel panel;
  private final PanelAttached whole;
  private final GlobalSystem system;
  private final int[] kept;
  private final double[][] shapes;
  private final double[] stiffness;
  private final Map<Load, Reduced> reduced = new ConcurrentHashMap<>();
  private final Map<PanelPoint, Spot> spots = new ConcurrentHashMap<>();

  /**
   * A load seen from the ties.
   *
   * @param u displacements of the panel, its ties held
   * @param atTies forces on the kept unknowns
   * @param applied the load as forces on the panel's nodes
   * @param residual of the panel's equations
   * @param reciprocity how far the forces at the ties by the load's own solution are from those by
   *     the motions of the ties (Maxwell, Betti), relative
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Reduced(
      double[] u, double[] atTies, List<Applied> applied, double residual, double reciprocity) {}

  /** The deflection of one place: of the kept unknowns, and of the panel with its ties held. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Spot(double[] ofTies, LinearForm whole) {}

  /** Which of the two meshes of a panel. */
  public enum Mesh {
    /** The coarser. */
    FIRST,
    /** Cells of half the size. */
    SECOND
  }

  private CondensedPanel(Panel panel, PanelGrid grid) {
    this.panel = panel;
    Equations equations = new Equations();
    this.whole = PanelAttached.untied(grid, equations);
    this.kept = kept();
    for (int unknown : kept) {
      equations.hold(LinearForm.of(unknown), 0);
    }
    GlobalSystem.Made made = GlobalSystem.of(equations);
    if (made instanceof GlobalSystem.Refused refused) {
      throw new IllegalStateException(refused.loose().message());
    }
    this.system = ((GlobalSystem.Ready) made).system();
    this.shapes = system.movedConditions(kept.length);
    this.stiffness = stiffness();
  }

  /**
   * Reduces a panel.
   *
   * @throws IllegalArgumentException when the ground holds the panel, or a tie misses its mesh
   * @throws IllegalStateException when the panel can move with its ties held
   */
  public static CondensedPanel of(Panel panel, Mesh mesh) {
    if (!panel.supports().isEmpty()) {
      throw new IllegalArgumentException(
          "panel '" + panel.name() + "' is held by the ground; hold it by ties to reduce it");
    }
    List<PanelGrid> pair = PanelMesher.pair(panel, List.of());
    return new CondensedPanel(panel, pair.get(mesh == Mesh.FIRST ? 0 : 1));
  }

  private int[] kept() {
    return panel.ties().stream()
        .flatMapToInt(
            tie -> tie.links().keySet().stream().mapToInt(d -> 6 * whole.vertexAt(tie) + d.index()))
        .sorted()
        .distinct()
        .toArray();
  }

  /** The forces at the kept unknowns when one of them moves by one, from the cells around them. */
  private double[] stiffness() {
    int n = kept.length;
    double[] k = new double[n * n];
    double[] forces = new double[system.equations().unknowns()];
    List<Element> around = around();
    for (int c = 0; c < n; c++) {
      Arrays.fill(forces, 0);
      for (Element element : around) {
        add(element, shapes[c], forces);
      }
      for (int r = 0; r < n; r++) {
        k[r * n + c] += forces[kept[r]] / 2;
        k[c * n + r] += forces[kept[r]] / 2;
      }
    }
    return k;
  }

  private List<Element> around() {
    boolean[] isKept = new boolean[system.equations().unknowns()];
    for (int unknown : kept) {
      isKept[unknown] = true;
    }
    return system.elements().stream()
        .filter(e -> Arrays.stream(e.unknowns()).anyMatch(unknown -> isKept[unknown]))
        .toList();
  }

  private static void add(Element element, double[] u, double[] forces) {
    int[] unknowns = element.unknowns();
    double[] own = new double[unknowns.length];
    for (int i = 0; i < own.length; i++) {
      own[i] = u[unknowns[i]];
    }
    double[] f = element.forces(own);
    for (int i = 0; i < own.length; i++) {
      forces[unknowns[i]] += f[i];
    }
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The panel. */
  public Panel panel() {
    return panel;
  }

  /** Number of unknowns of the panel before it is reduced. */
  public int unknowns() {
    return system.matrix().size();
  }

  /** A load as the ties see it; loads of other parts come out as nothing. */
  Reduced reduced(Load load) {
    return reduced.computeIfAbsent(load, this::reduce);
  }

  private Reduced reduce(Load load) {
    double[] f = new double[system.equations().unknowns()];
    List<Applied> applied = whole.apply(load, 1, f);
    double[] atTies = new double[kept.length];
    if (applied.isEmpty()) {
      return new Reduced(f, atTies, applied, 0, 0);
    }
    GlobalSystem.Solved solved = system.solve(f, false, null);
    double largest = 0;
    double apart = 0;
    for (int k = 0; k < kept.length; k++) {
      atTies[k] = dot(shapes[k], f);
      largest = Math.max(largest, Math.abs(atTies[k]));
      apart = Math.max(apart, Math.abs(atTies[k] + solved.conditionForce()[k]));
    }
    double reciprocity = largest == 0 ? 0 : apart / largest;
    return new Reduced(solved.u(), atTies, applied, solved.residual(), reciprocity);
  }

  /**
   * The panel at its place in a frame.
   *
   * @param panel the panel
   * @param nodes places of the frame's nodes
   */
  record Placed(CondensedPanel panel, Map<String, Vec3> nodes) implements Attachment {
    @Override
    public CondensedAttached join(Equations equations, Map<String, Integer> vertices) {
      return panel.join(equations, vertices, nodes);
    }
  }

  private CondensedAttached join(
      Equations equations, Map<String, Integer> vertices, Map<String, Vec3> nodes) {
    equations.reach(Math.max(equations.reach(), Math.hypot(panel.length(), panel.width()) / 2));
    Map<Integer, Integer> outer = new LinkedHashMap<>();
    List<Integer> unknowns = new ArrayList<>();
    for (int unknown : kept) {
      int vertex = outer.computeIfAbsent(unknown / 6, v -> equations.vertex(panel.name()));
      unknowns.add(6 * vertex + unknown % 6);
    }
    outer.values().forEach(v -> absent(equations, v, unknowns));
    int[] joined = unknowns.stream().mapToInt(Integer::intValue).toArray();
    equations.add(new CondensedElement(panel.name(), joined, stiffness));
    CondensedAttached attached = new CondensedAttached(this, joined);
    for (PanelTie tie : panel.ties()) {
      Integer node = vertices.get(tie.node());
      if (node == null) {
        throw new IllegalArgumentException(
            "panel '" + panel.name() + "' is tied to the unknown node '" + tie.node() + "'");
      }
      Vec3 at = panel.place().inSpace(tie.at().x(), tie.at().y());
      Vec3 arm = at.minus(nodes.get(tie.node()));
      attached.tie(equations, tie, outer.get(whole.vertexAt(tie)), node, arm);
    }
    return attached;
  }

  private static void absent(Equations equations, int vertex, List<Integer> unknowns) {
    for (Direction d : Direction.values()) {
      if (!unknowns.contains(6 * vertex + d.index())) {
        equations.absent(6 * vertex + d.index());
      }
    }
  }

  /** How a place of the panel moves. */
  Spot spot(double x, double y) {
    return spots.computeIfAbsent(new PanelPoint(x, y), this::spot);
  }

  private Spot spot(PanelPoint at) {
    LinearForm deflection = whole.deflection(at.x(), at.y());
    double[] ofTies = new double[kept.length];
    for (int k = 0; k < kept.length; k++) {
      ofTies[k] = deflection.at(shapes[k]);
    }
    return new Spot(ofTies, deflection);
  }
}
