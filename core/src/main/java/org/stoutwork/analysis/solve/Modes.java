package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.BeamShape;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.analysis.element.Massive;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.linear.Eigenpairs;
import org.stoutwork.linear.SparseSymmetric;

/** Buckling factors and natural frequencies, members being divided into pieces inside. */
public final class Modes {
  /** Pieces a member is divided into unless told otherwise. */
  public static final int PIECES = 16;

  private Modes() {}

  /**
   * Buckling modes of a combination, as {@link #buckling(PreparedFrame, Combination, int, int)}.
   */
  public static List<Mode> buckling(PreparedFrame frame, Combination combination, int count) {
    return buckling(frame, combination, count, PIECES);
  }

  /**
   * Multipliers of all loads at which the frame buckles, smallest positive first; contacts keep the
   * state they have under the loads as given, axial forces are those of first order.
   *
   * @param count how many are wanted; fewer come back when there are no more
   * @throws IllegalStateException when the combination has no first-order solution
   */
  public static List<Mode> buckling(
      PreparedFrame frame, Combination combination, int count, int pieces) {
    FrameSolver.Layout layout = new FrameSolver.Layout(frame.model(), pieces);
    List<Beam> beams = new ArrayList<>();
    layout.pieces.values().forEach(beams::addAll);
    layout.attach(frame.attachments());
    Loading loading = new Loading(layout, combination);
    ContactSearch.Found found = new ContactSearch(ready(layout.equations)).find(loading.forces());
    if (!(found instanceof ContactSearch.Settled settled)) {
      throw new IllegalStateException(ContactSearch.reason(found));
    }
    double[] axial = SecondOrder.axialForces(layout, loading, settled.solved().u());
    GlobalSystem system = ready(layout.equations.withFrozenContacts(settled.open()));
    SparseSymmetric.Builder geometric = SparseSymmetric.builder(system.elimination().reducedSize());
    for (int k = 0; k < axial.length; k++) {
      double[] g = BeamShape.geometric(beams.get(k));
      for (int i = 0; i < g.length; i++) {
        g[i] *= -axial[k];
      }
      Assembling.scatter(geometric, beams.get(k).unknowns(), g, system.elimination());
    }
    List<Mode> modes = new ArrayList<>();
    for (Eigenpairs.Pair pair :
        Eigenpairs.largest(system.matrix(), system.factor(), geometric.build(), count)) {
      modes.add(mode(1 / pair.value(), layout, system, pair.vector()));
    }
    return modes;
  }

  /** Natural frequencies with rotary inertia, contacts closed, as the long form. */
  public static List<Mode> frequencies(PreparedFrame frame, int count) {
    return frequencies(frame, count, true, PIECES);
  }

  /**
   * Natural frequencies in Hz, lowest first, with consistent masses and all one-way contacts
   * closed; axial forces have no effect.
   *
   * @param rotary whether sections resist turning in bending
   */
  public static List<Mode> frequencies(PreparedFrame frame, int count, boolean rotary, int pieces) {
    FrameSolver.Layout layout = new FrameSolver.Layout(frame.model(), pieces);
    layout.attach(frame.attachments());
    boolean[] open = new boolean[layout.equations.contacts.size()];
    GlobalSystem system = ready(layout.equations.withFrozenContacts(open));
    SparseSymmetric.Builder mass = SparseSymmetric.builder(system.elimination().reducedSize());
    for (Element element : system.elements()) {
      if (element instanceof Beam beam) {
        double[] m = BeamShape.mass(beam, rotary);
        Assembling.scatter(mass, beam.unknowns(), m, system.elimination());
      } else if (element instanceof Massive massive) {
        Assembling.scatter(mass, element.unknowns(), massive.mass(rotary), system.elimination());
      }
    }
    frame
        .model()
        .masses()
        .forEach(
            (node, kg) -> {
              int v = layout.vertices.get(node);
              int[] translations = {6 * v, 6 * v + 1, 6 * v + 2};
              double t = kg * 1e-3;
              double[] m = {t, 0, 0, 0, t, 0, 0, 0, t};
              Assembling.scatter(mass, translations, m, system.elimination());
            });
    List<Mode> modes = new ArrayList<>();
    for (Eigenpairs.Pair pair :
        Eigenpairs.largest(system.matrix(), system.factor(), mass.build(), count)) {
      double hz = 1 / Math.sqrt(pair.value()) / (2 * Math.PI);
      modes.add(mode(hz, layout, system, pair.vector()));
    }
    return modes;
  }

  private static GlobalSystem ready(Equations equations) {
    GlobalSystem.Made made = GlobalSystem.of(equations);
    if (made instanceof GlobalSystem.Refused refused) {
      throw new IllegalStateException(refused.loose().message());
    }
    return ((GlobalSystem.Ready) made).system();
  }

  private static Mode mode(
      double value, FrameSolver.Layout layout, GlobalSystem system, double[] reduced) {
    double[] shape = system.elimination().expand(reduced, null);
    double largest = 0;
    for (int i = 0; i < shape.length; i++) {
      largest = Math.max(largest, Math.abs(i % 6 < 3 ? shape[i] : shape[i] * layout.reach));
    }
    double scale = largest == 0 ? 1 : 1 / largest;
    double[] scaled = Arrays.stream(shape).map(v -> v * scale).toArray();
    return new Mode(value, layout.vertices, scaled);
  }
}
