package org.stoutwork.report.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.figure.BenchViews;
import org.stoutwork.report.figure.PartList;
import org.stoutwork.report.pdf.MissingGlyph;
import org.stoutwork.report.pdf.TypeCase;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.result.BenchResult;

/** The drawing of the bench, whose views have rows of dimensions on three sides. */
class DrawingLabelsTest {

  private static final TextMeasure MEASURE = TypeCase.open(MissingGlyph.REFUSE);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-bench",
        "class-bench",
        "planer-bench",
        "planer-bench-improved",
        "long-spar-bench",
        "long-spar-bench-improved",
        "travelling-bench"
      })
  void no_two_figures_of_a_bench_meet(String example) {
    BenchResult result = Sheets.example(example);
    for (UnitSystem units : UnitSystem.values()) {
      Drawing drawing =
          BenchViews.draw(
              result.bench(), PartList.of(result.bench()), new Amounts(units), MEASURE, 166, 120);
      List<Mark> labels = drawing.marks().stream().filter(Mark.Label.class::isInstance).toList();
      for (int i = 0; i < labels.size(); i++) {
        Bounds one = Extent.of(labels.get(i), MEASURE);
        for (Mark other : labels.subList(i + 1, labels.size())) {
          assertFalse(
              one.overlaps(Extent.of(other, MEASURE), 0.3), labels.get(i) + " and " + other);
        }
      }
    }
  }
}
