package org.stoutwork.report.file.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.solve.PanelFrameSolver;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.PlatedModel;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.PlatedTop;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignTables;

class PlatedBenchFileTest {

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static Bench bench() throws UnsoundBench {
    return BenchSketch.named("bench to be solved again")
        .wood("beech-european")
        .top(t -> t.length(mm(1730)).width(mm(640)).thickness(mm(62)))
        .endFrame(f -> f.at(mm(270)))
        .endFrame(f -> f.at(mm(1490)))
        .complete(WoodCatalogue.load());
  }

  @Test
  void a_plated_bench_is_written_as_a_frame_file_and_answers_alike_when_read_again()
      throws UnsoundBench, UnreadableFile {
    PlatedTop plate = new Inquiry(bench(), DesignTables.load()).plate().orElseThrow();
    PlatedModel model = plate.model(JointLevel.MEAN);
    LoadCase patch = plate.loads().unitPatch(0, 0);
    LoadCase weight = plate.loads().permanent();
    Panel top = model.top().toBuilder().mesh(new PanelMesh.Even(10, 5)).report(880, 320).build();
    List<Load> all = new ArrayList<>(weight.loads());
    all.addAll(patch.loads());
    LoadCase together = new LoadCase("weight and patch", all);
    FrameFile file =
        FrameFiles.of("bench", model.frame(), List.of(top), together, EnumSet.of(Analysis.STATIC));
    FrameFile read =
        FrameFileReader.read(new SourceText("bench.json", FrameWriter.json(file))).value();
    double there = sag(model.frame(), List.of(top), together);
    double back = sag(read.model(), PanelModels.panels(read), PanelModels.loads(read));
    assertEquals(there, back, 1e-6 * Math.abs(there));
    assertTrue(there < 0);
  }

  private static double sag(FrameModel model, List<Panel> panels, LoadCase load) {
    PanelFrameSolver.Result result =
        PanelFrameSolver.prepare(model, panels, List.of(load)).solver().solve(load);
    return result.panels().get("top").report().get(0).w();
  }
}
