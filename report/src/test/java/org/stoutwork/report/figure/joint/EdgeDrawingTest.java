package org.stoutwork.report.figure.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.TopSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class EdgeDrawingTest {

  private static final double WIDTH = 80;
  private static final double HEIGHT = 92;

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static Bench bench(Consumer<TopSketch> edges, double endDepth) throws UnsoundBench {
    return bench(edges, endDepth, GluedEdge.BELOW);
  }

  private static Bench bench(Consumer<TopSketch> edges, double endDepth, GluedEdge edge)
      throws UnsoundBench {
    BenchSketch sketch =
        BenchSketch.named("trial")
            .wood("beech, European")
            .height(mm(870))
            .top(t -> edges.accept(t.length(mm(1730)).width(mm(640)).thickness(mm(61))));
    for (StretcherLine line : new StretcherLine[] {StretcherLine.FRONT, StretcherLine.BACK}) {
      sketch.stretcher(
          s -> {
            s.name(line.words() + " stretcher").line(line).depth(mm(97)).centreAt(mm(260));
            if (endDepth > 0) {
              s.endDepth(mm(endDepth)).endLength(mm(215)).endPiece(edge);
            }
          });
    }
    return sketch.complete(WoodCatalogue.load());
  }

  private static List<EdgeDrawing.Edge> draw(Bench bench) {
    return EdgeDrawing.of(bench, new Amounts(UnitSystem.SI), new EmMeasure(), WIDTH, HEIGHT);
  }

  private static List<String> words(Drawing drawing) {
    return drawing.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(label -> ((Mark.Label) label).text().characters())
        .toList();
  }

  @Test
  void a_bench_without_such_edges_has_no_such_drawings() throws UnsoundBench {
    assertEquals(List.of(), draw(bench(t -> {}, 0)));
  }

  @Test
  void cap_lipping_and_deepened_end_carry_their_sizes() throws UnsoundBench {
    List<EdgeDrawing.Edge> edges =
        draw(
            bench(
                t ->
                    t.endCap(c -> c.width(mm(67)).slot(mm(13)))
                        .lipping(
                            l ->
                                l.edges(Lipping.Edges.LONG)
                                    .thickness(mm(11))
                                    .nailed(true)
                                    .nailDiameter(mm(2.2))
                                    .nailLength(mm(43))),
                131));
    assertEquals(
        List.of("End cap", "Lipping", "Deepened end"),
        edges.stream().map(EdgeDrawing.Edge::title).toList());
    assertTrue(words(edges.get(0).drawing()).containsAll(List.of("67", "640")));
    assertTrue(edges.get(0).note().replace('\u00a0', ' ').contains("by 13 mm in all"));
    assertTrue(words(edges.get(1).drawing()).containsAll(List.of("11", "61", "43")));
    assertTrue(words(edges.get(2).drawing()).containsAll(List.of("97", "131", "215")));
    assertTrue(edges.get(2).note().startsWith("front stretcher, back stretcher"));
    edges.forEach(
        edge ->
            assertTrue(
                edge.drawing().width() <= WIDTH + 1e-6 && edge.drawing().height() <= HEIGHT + 1e-6,
                edge.title()));
  }

  @Test
  void a_piece_glued_on_above_is_drawn_above_and_said_to_be() throws UnsoundBench {
    EdgeDrawing.Edge below = draw(bench(t -> {}, 131)).get(0);
    EdgeDrawing.Edge above = draw(bench(t -> {}, 131, GluedEdge.ABOVE)).get(0);
    assertTrue(below.note().contains("one piece glued on below"), below.note());
    assertTrue(above.note().contains("one piece glued on above"), above.note());
    // On paper y runs downwards.
    assertEquals(1, Math.signum(middle(below) - middleOfAll(below)));
    assertEquals(-1, Math.signum(middle(above) - middleOfAll(above)));
  }

  /** Place on paper of the middle of the shallowest shape, which is the piece. */
  private static double middle(EdgeDrawing.Edge edge) {
    return shapes(edge.drawing()).stream()
        .min(Comparator.comparingDouble(h -> h[1] - h[0]))
        .map(h -> (h[0] + h[1]) / 2)
        .orElseThrow();
  }

  private static double middleOfAll(EdgeDrawing.Edge edge) {
    double low = shapes(edge.drawing()).stream().mapToDouble(h -> h[0]).min().orElseThrow();
    double high = shapes(edge.drawing()).stream().mapToDouble(h -> h[1]).max().orElseThrow();
    return (low + high) / 2;
  }

  private static List<double[]> shapes(Drawing drawing) {
    return drawing.marks().stream()
        .filter(Mark.Polygon.class::isInstance)
        .map(mark -> ((Mark.Polygon) mark).points())
        .map(
            corners ->
                new double[] {
                  corners.stream().mapToDouble(p -> p.y()).min().orElse(0),
                  corners.stream().mapToDouble(p -> p.y()).max().orElse(0)
                })
        .filter(h -> h[1] - h[0] > 5)
        .toList();
  }

  @Test
  void a_piece_is_drawn_as_large_as_its_scale_says() throws UnsoundBench {
    Drawing end = draw(bench(t -> {}, 131)).get(0).drawing();
    String title =
        words(end).stream().filter(w -> w.contains("\u00a0:\u00a0")).findFirst().orElseThrow();
    double scale = Double.parseDouble(title.substring(title.lastIndexOf('\u00a0') + 1));
    // The glued-on piece: 131 - 97 = 34 mm deep and 215 mm long.
    assertTrue(
        end.marks().stream()
            .filter(Mark.Polygon.class::isInstance)
            .map(mark -> ((Mark.Polygon) mark).points())
            .anyMatch(
                corners -> {
                  double wide =
                      corners.stream().mapToDouble(p -> p.x()).max().orElse(0)
                          - corners.stream().mapToDouble(p -> p.x()).min().orElse(0);
                  double high =
                      corners.stream().mapToDouble(p -> p.y()).max().orElse(0)
                          - corners.stream().mapToDouble(p -> p.y()).min().orElse(0);
                  return Math.abs(wide - 215 / scale) < 1e-6 && Math.abs(high - 34 / scale) < 1e-6;
                }));
  }
}
