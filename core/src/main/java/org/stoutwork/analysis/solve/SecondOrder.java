package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.BeamShape;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.LoadCase;

/**
 * Second-order analysis: equilibrium in which each piece's axial force works on its slope (P-delta,
 * both of the sway and within members), the axial forces iterated until they agree.
 */
public final class SecondOrder {
  /** Pieces a member is divided into unless told otherwise. */
  public static final int PIECES = 16;

  private static final int ROUNDS = 40;

  /** Rounds that take the new axial forces as they are, before steps are halved. */
  private static final int DIRECT_ROUNDS = 10;

  private static final double AGREED = 1e-11;

  private final FrameModel model;
  private final List<Attachment> attachments;
  private final int pieces;

  private SecondOrder(FrameModel model, List<Attachment> attachments, int pieces) {
    this.model = model;
    this.attachments = attachments;
    this.pieces = pieces;
  }

  /** What comes of it: a result, or the reason why there is none. */
  public sealed interface Answer permits SecondOrderResult, NoAnswer {
    /** The result. Throws {@link IllegalStateException} with the reason when there is none. */
    default SecondOrderResult result() {
      if (this instanceof SecondOrderResult found) {
        return found;
      }
      throw new IllegalStateException(((NoAnswer) this).message());
    }
  }

  /**
   * The structure buckles under the loads, or moves without end.
   *
   * @param message a sentence for a person
   */
  public record NoAnswer(String message) implements Answer {}

  /** Solves one load case. */
  public static Answer solve(PreparedFrame frame, LoadCase loadCase) {
    return solve(frame, Combination.of(loadCase), PIECES);
  }

  /**
   * Solves a combination.
   *
   * @param pieces how many pieces each member is divided into, 1 or more
   */
  public static Answer solve(PreparedFrame frame, Combination combination, int pieces) {
    return new SecondOrder(frame.model(), frame.attachments(), pieces).run(combination);
  }

  private Answer run(Combination combination) {
    FrameSolver.Layout layout = new FrameSolver.Layout(model, pieces);
    List<Beam> beams = new ArrayList<>();
    layout.pieces.values().forEach(beams::addAll);
    List<double[]> perNewton = beams.stream().map(BeamShape::geometric).toList();
    layout.attach(attachments);
    Loading loading = new Loading(layout, combination);
    double[] axial = new double[beams.size()];
    for (int round = 0; round < ROUNDS; round++) {
      List<AxialElement> elements = new ArrayList<>();
      for (int k = 0; k < axial.length; k++) {
        elements.add(new AxialElement(beams.get(k), perNewton.get(k), axial[k]));
      }
      ContactSearch.Found found = solved(layout, elements, loading);
      if (!(found instanceof ContactSearch.Settled settled)) {
        return new NoAnswer("no second-order equilibrium: " + ContactSearch.reason(found));
      }
      double[] next = axialForces(layout, loading, settled.solved().u());
      if (agree(axial, next)) {
        return new SecondOrderResult(layout, loading, settled, elements, round + 1);
      }
      axial = round < DIRECT_ROUNDS ? next : between(axial, next);
    }
    return new NoAnswer(
        "no second-order equilibrium was found: axial forces did not settle within "
            + ROUNDS
            + " rounds; the loads are near buckling, or move the frame farther than small"
            + " displacements allow");
  }

  /** Half-way from the last axial forces to the next: forces that swing to and fro come to rest. */
  private static double[] between(double[] last, double[] next) {
    double[] out = new double[last.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = (last[i] + next[i]) / 2;
    }
    return out;
  }

  private static ContactSearch.Found solved(
      FrameSolver.Layout layout, List<AxialElement> elements, Loading loading) {
    Equations equations = layout.equations.withElements(0, elements);
    GlobalSystem.Made made = GlobalSystem.of(equations);
    if (made instanceof GlobalSystem.Refused refused) {
      return new ContactSearch.Lifting(refused.loose());
    }
    GlobalSystem system = ((GlobalSystem.Ready) made).system();
    return new ContactSearch(system).find(loading.forces());
  }

  /** Mean of both ends of each piece, tension positive. */
  static double[] axialForces(FrameSolver.Layout layout, Loading loading, double[] u) {
    List<Double> axial = new ArrayList<>();
    layout.pieces.forEach(
        (member, pieces) -> {
          Beam whole = layout.beams.get(member);
          for (int k = 0; k < pieces.size(); k++) {
            Beam piece = pieces.get(k);
            double[] own = own(piece, u);
            var state = piece.state(own, loading.span(whole, k));
            axial.add((state.endForces()[0] - state.startForces()[0]) / 2);
          }
        });
    return axial.stream().mapToDouble(Double::doubleValue).toArray();
  }

  static double[] own(Beam beam, double[] u) {
    double[] own = new double[12];
    for (int i = 0; i < 12; i++) {
      own[i] = u[beam.unknowns()[i]];
    }
    return own;
  }

  private static boolean agree(double[] a, double[] b) {
    double size = 0;
    double difference = 0;
    for (int k = 0; k < a.length; k++) {
      size = Math.max(size, Math.abs(b[k]));
      difference = Math.max(difference, Math.abs(a[k] - b[k]));
    }
    return difference <= AGREED * size;
  }
}
