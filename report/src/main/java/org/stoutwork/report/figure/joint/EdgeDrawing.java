package org.stoutwork.report.figure.joint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndCap;
import org.stoutwork.bench.EndExtension;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.units.Amounts;

/** What is put on to edges and ends, to scale: end caps, lippings, deepened ends of stretchers. */
public final class EdgeDrawing {

  private static final double[] SCALES = {
    1, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10, 12, 15, 20, 25, 30, 50
  };
  private static final double TITLE_GAP = 2.6;

  private final Amounts amounts;
  private final TextMeasure measure;
  private final double width;
  private final double height;

  /**
   * One drawing.
   *
   * @param title what it shows
   * @param note what the dimensions do not say; may be empty
   * @param drawing to scale
   */
  public record Edge(String title, String note, Drawing drawing) {}

  private EdgeDrawing(Amounts amounts, TextMeasure measure, double width, double height) {
    this.amounts = amounts;
    this.measure = measure;
    this.width = width;
    this.height = height;
  }

  /**
   * The drawings that a bench needs, each in the largest usual scale that fits; those that fit in
   * none are left out.
   *
   * @param bench to draw
   * @param amounts for the figures of dimensions
   * @param measure of the type
   * @param width most width on paper, mm
   * @param height most height on paper, mm
   */
  public static List<Edge> of(
      Bench bench, Amounts amounts, TextMeasure measure, double width, double height) {
    EdgeDrawing edges = new EdgeDrawing(amounts, measure, width, height);
    List<Edge> out = new ArrayList<>();
    bench.top().endCap().flatMap(cap -> edges.endCap(bench, cap)).ifPresent(out::add);
    bench.top().lipping().flatMap(lip -> edges.lipping(bench, lip)).ifPresent(out::add);
    Set<List<Object>> drawn = new HashSet<>();
    for (Stretcher s : bench.stretchers()) {
      if (s.extension().isPresent() && drawn.add(List.of(s.depth(), s.extension().get()))) {
        edges.deepened(bench, s).ifPresent(out::add);
      }
    }
    return List.copyOf(out);
  }

  private Optional<Edge> drawn(String title, String note, String view, Consumer<JointView> shape) {
    for (double scale : SCALES) {
      JointView v = new JointView(scale, amounts, measure);
      shape.accept(v);
      v.dimensioned();
      v.titled(view, v.scale(), v.reach().top() - TITLE_GAP);
      Sketch all = new Sketch().add(v.marks());
      Bounds reach = Extent.of(all.marks(), measure);
      if (reach.width() <= width && reach.height() <= height) {
        return Optional.of(new Edge(title, note, all.fitted(measure, 0)));
      }
    }
    return Optional.empty();
  }

  /** One end of the top from above, broken off beyond the board. */
  private Optional<Edge> endCap(Bench bench, EndCap cap) {
    double across = bench.top().width().mm();
    double board = cap.width().mm();
    double shown = Math.max(board, 0.25 * across);
    String note =
        cap.glued()
            ? "glued over its whole length"
            : "glued in the middle only; the slots of the outer pegs are longer than the pegs by "
                + amounts.length(cap.slot().mm())
                + " in all";
    return drawn(
        "End cap",
        note + "; size and place of the tongue are not part of the check",
        "End from above",
        v ->
            v.seen(-shown, 0, 0, across)
                .broken(-shown, 0, -shown, across)
                .seen(0, 0, board, across)
                .axis(-shown, across / 2, board, across / 2)
                .below(0, 0, board, 0, 0)
                .right(board, 0, 0, across));
  }

  /** A section through an edge with its lipping. */
  private Optional<Edge> lipping(Bench bench, Lipping lip) {
    double thick = lip.thickness().mm();
    double top = bench.top().thicknessMm();
    Optional<Lipping.Hold.Nailed> nails =
        lip.hold() instanceof Lipping.Hold.Nailed nailed ? Optional.of(nailed) : Optional.empty();
    double nail = nails.map(n -> n.length().mm()).orElse(0.0);
    double shown = Math.max(1.2 * top, nail + 0.4 * top);
    String note =
        lip.edges().words()
            + nails
                .map(
                    n ->
                        "; nails %s across, every %s"
                            .formatted(
                                amounts.length(n.diameter().mm()),
                                amounts.length(n.spacing().mm())))
                .orElse("; glued");
    return drawn(
        "Lipping",
        note,
        "Section",
        v -> {
          v.cutOtherwise(thick, 0, shown, top).broken(shown, 0, shown, top).cut(0, 0, thick, top);
          nails.ifPresent(
              n -> {
                double r = n.diameter().mm() / 2;
                v.solid(
                    List.of(
                        new Point(0, top / 2 - r),
                        new Point(nail, top / 2 - r),
                        new Point(nail, top / 2 + r),
                        new Point(0, top / 2 + r)));
                v.below(0, 0, nail, top / 2, 1);
              });
          v.below(0, 0, thick, 0, 0).right(shown, 0, 0, top);
        });
  }

  /** The end of a stretcher from the front, its shoulder at the left. */
  private Optional<Edge> deepened(Bench bench, Stretcher s) {
    EndExtension piece = s.extension().orElseThrow();
    double depth = s.depth().mm();
    double deep = piece.depth().mm();
    double length = piece.length().mm();
    boolean below = piece.edge() == GluedEdge.BELOW;
    double low = below ? deep - depth : 0;
    double line = below ? low : depth;
    double shown = length + depth;
    List<String> names =
        bench.stretchers().stream()
            .filter(o -> o.depth().equals(s.depth()) && o.extension().equals(s.extension()))
            .map(Stretcher::name)
            .toList();
    return drawn(
        "Deepened end",
        String.join(", ", names)
            + "; one piece glued on "
            + piece.edge().words()
            + "; the other edge runs through",
        "From the front",
        v ->
            v.seen(0, below ? 0 : line, length, below ? line : deep)
                .seen(0, low, shown, low + depth)
                .broken(shown, low, shown, low + depth)
                .below(0, 0, length, 0, 0)
                .left(0, 0, 0, deep)
                .right(shown, 0, low, low + depth));
  }
}
