package org.stoutwork.report.sheet.bench;

import java.nio.file.Path;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.result.BenchResult;
import org.stoutwork.study.BenchCheck;

/** Results to print. */
final class Sheets {

  static final BenchCheck CHECK = BenchCheck.load();
  static final SheetOptions A4 = new SheetOptions(Paper.A4, UnitSystem.SI, "0.0.1");
  static final SheetOptions LETTER = new SheetOptions(Paper.LETTER, UnitSystem.INCH_POUND, "0.0.1");

  private Sheets() {}

  /** The result of an example file. */
  static BenchResult example(String name) {
    try {
      Path file = Path.of("examples", name + ".yaml");
      return CHECK.run(BenchFileReader.read(file, CHECK.woods()).bench());
    } catch (UnreadableFile e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** The result of a sketch that must be sound. */
  static BenchResult of(BenchSketch sketch) {
    try {
      return CHECK.run(sketch);
    } catch (UnsoundBench e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** Three end frames, stretchers in four lines, and names that are too long. */
  static BenchSketch large() {
    BenchSketch sketch =
        BenchSketch.named(
                "bench for the long wall of the joinery and turning hall, {third} of four_made // ^2")
            .wood("beech, European")
            .height(Length.ofMm(915))
            .top(
                t -> t.length(Length.ofMm(3450)).width(Length.ofMm(745)).thickness(Length.ofMm(71)))
            .people(
                p ->
                    p.project(
                            "extension of the school workshops in the former railway carriage shed")
                        .revision("C")
                        .date("2026-03-14"));
    for (int at : new int[] {310, 1725, 3140}) {
      sketch.endFrame(f -> f.at(Length.ofMm(at)));
    }
    for (StretcherLine line : new StretcherLine[] {StretcherLine.FRONT, StretcherLine.BACK}) {
      for (int z : new int[] {170, 430}) {
        sketch.stretcher(
            s ->
                s.name(
                        (z < 300 ? "lower" : "upper")
                            + " long rail along the "
                            + line.words()
                            + " of the bench")
                    .line(line)
                    .depth(Length.ofMm(95))
                    .thickness(Length.ofMm(38))
                    .centreAt(Length.ofMm(z)));
      }
    }
    return sketch.vise(
        v ->
            v.name("vise with a wooden jaw")
                .edge(Edge.FRONT)
                .at(Length.ofMm(520))
                .outreach(Length.ofMm(260))
                .clampForce(Force.ofNewtons(4000)));
  }

  /** The smallest bench that somebody may ask for. */
  static BenchSketch tiny() {
    return BenchSketch.named("stool")
        .wood("oak, European")
        .height(Length.ofMm(420))
        .top(t -> t.length(Length.ofMm(520)).width(Length.ofMm(330)).thickness(Length.ofMm(32)));
  }
}
