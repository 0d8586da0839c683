package org.stoutwork.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;

/** A piece glued to one edge of a stretcher moves the middle of its end. */
class DeepenedEndTest {

  /** 95 deep with its middle at 300; the end as deep as said, its piece 210 long. */
  private static BenchSketch sketch(double endDepth, GluedEdge edge) {
    return Benches.ordinary()
        .stretcher(
            s ->
                s.name("beam")
                    .line(StretcherLine.FRONT)
                    .depth(mm(95))
                    .centreAt(mm(300))
                    .endDepth(mm(endDepth))
                    .endLength(mm(210))
                    .endPiece(edge));
  }

  private static BenchModel model(Bench bench) {
    return BenchModel.of(
        bench, Timbers.of(bench, Benches.TABLES)::get, JointLevel.MEAN, FloorContact.HELD);
  }

  private static JointSpot spot(BenchModel model) {
    return model.joints().stream().filter(j -> j.rail().equals("beam")).findFirst().orElseThrow();
  }

  @Test
  void the_end_hangs_by_half_of_the_piece_and_the_other_edge_runs_through() {
    Bench bench = Benches.complete(sketch(137, GluedEdge.BELOW));
    Stretcher beam = bench.stretchers().get(0);
    assertEquals(300 - 21, beam.endCentreMm(), 1e-12);
    assertEquals(300 - 47.5 - 42, beam.lowestMm(), 1e-12);
    assertEquals(347.5, beam.highestMm(), 1e-12);
    BenchModel model = model(bench);
    Member first = model.frame().members().get("beam, length 1");
    assertEquals(279, model.frame().nodes().get(first.from()).z(), 1e-12);
    assertEquals(300, model.frame().nodes().get(first.to()).z(), 1e-12);
    assertEquals(0, first.start().offset().z(), 0);
    assertEquals(-21, first.end().offset().z(), 1e-12);
    Member middle = model.frame().members().get("beam, length 2");
    assertEquals(0, middle.start().offset().z(), 0);
    // The leg stands on the floor: 300 − 47.5 − 42 of it lie under the end, and the stub's
    // shoulder.
    double shoulder = spot(model).setting().postBelow() - 210.5;
    assertTrue(shoulder >= 0 && shoulder < 137 / 2.0, "shoulder " + shoulder);
  }

  @Test
  void a_piece_above_lifts_the_end_as_much() {
    Bench bench = Benches.complete(sketch(137, GluedEdge.ABOVE));
    Stretcher beam = bench.stretchers().get(0);
    assertEquals(321, beam.endCentreMm(), 1e-12);
    assertEquals(252.5, beam.lowestMm(), 1e-12);
    assertEquals(389.5, beam.highestMm(), 1e-12);
    assertEquals(
        21, model(bench).frame().members().get("beam, length 1").end().offset().z(), 1e-12);
  }

  @Test
  void a_piece_of_no_depth_changes_nothing() {
    BenchSketch plain =
        Benches.ordinary()
            .stretcher(
                s -> s.name("beam").line(StretcherLine.FRONT).depth(mm(95)).centreAt(mm(300)));
    double without = sway(Benches.complete(plain));
    assertEquals(without, sway(Benches.complete(sketch(95, GluedEdge.BELOW))), 1e-9 * without);
  }

  private static double sway(Bench bench) {
    FrameResult result =
        FrameSolver.prepare(model(bench).frame())
            .prepared()
            .solve(LoadCase.of("push", Load.node("top 1.1", 250, 0, 0)))
            .result();
    return result.displacement("top 1.1")[0];
  }

  /**
   * Pulled along the bench, an end that lies 21 mm lower bends the stretcher by its pull at that
   * lever: the moments at the step between end and middle differ by N·e, and nothing is lost.
   */
  @Test
  void the_pull_of_the_stretcher_turns_over_the_step_by_its_lever() {
    Bench bench = Benches.complete(sketch(137, GluedEdge.BELOW));
    FrameResult result =
        FrameSolver.prepare(model(bench).frame())
            .prepared()
            .solve(LoadCase.of("push", Load.node("top 1.1", 250, 0, 0)))
            .result();
    double[] end = result.member("beam, length 1").end();
    double[] middle = result.member("beam, length 2").start();
    // Own end forces: those of the end length on the step, and those of the middle on it.
    assertEquals(0, end[0] + middle[0], 1e-6);
    double lever = Math.abs(Math.abs(end[4] + middle[4]) - 21 * Math.abs(end[0]));
    assertEquals(0, lever, 1e-5 * Math.max(1, Math.abs(21 * end[0])));
  }

  @Test
  void an_end_that_reaches_below_the_floor_is_refused_with_the_room_there_is() {
    BenchSketch low =
        Benches.ordinary()
            .stretcher(
                s ->
                    s.name("beam")
                        .line(StretcherLine.FRONT)
                        .depth(mm(95))
                        .bottomEdgeAt(mm(31))
                        .endDepth(mm(137)));
    assertEquals(
        "stretchers[0].endDepth is such that the ends lie from −11 mm to 126 mm above the floor;"
            + " there is room from 0 mm to 783 mm, so at most 126 mm deep with the piece below.",
        assertThrows(UnsoundBench.class, () -> low.complete(Benches.WOODS))
            .faults()
            .get(0)
            .line()
            .replace('\u00a0', ' '));
  }
}
