package org.stoutwork.report.file.bench;

import org.stoutwork.bench.Grain;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.FixingSketch;
import org.stoutwork.bench.sketch.LayerSketch;
import org.stoutwork.bench.sketch.TopSketch;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;

/** The top with its layers and its screws. */
final class TopMapping {

  private static final int MOST_SCREWS = 20;

  private final Lengths lengths;

  TopMapping(Lengths lengths) {
    this.lengths = lengths;
  }

  void read(Fields file, BenchSketch sketch) {
    Take.part(file, "top", fields -> sketch.top(top -> top(fields, top)));
  }

  private void top(Fields fields, TopSketch top) {
    Take.value(lengths.size(fields, "length"), top::length);
    Take.value(lengths.size(fields, "width"), top::width);
    Take.value(lengths.size(fields, "thickness"), top::thickness);
    Take.value(fields.text("wood"), top::wood);
    Take.value(fields.scalar("grain", grain()), top::grain);
    Take.someParts(fields, "layers", (place, layer) -> top.layer(sketch -> layer(layer, sketch)));
    Take.value(HoldKind.field(fields, "hold", lengths), top::hold);
    Take.part(fields, "fixing", fixing -> top.fixing(sketch -> fixing(fixing, sketch)));
  }

  private void layer(Fields fields, LayerSketch layer) {
    Take.value(fields.text("wood"), layer::wood);
    Take.value(lengths.size(fields, "thickness"), layer::thickness);
    Take.value(fields.scalar("grain", grain()), layer::grain);
  }

  private void fixing(Fields fields, FixingSketch fixing) {
    Take.value(lengths.size(fields, "screwDiameter"), fixing::screwDiameter);
    Take.value(lengths.size(fields, "threadLength"), fixing::threadLength);
    Take.value(lengths.size(fields, "holeDiameter"), fixing::holeDiameter);
    Take.value(fields.wholeNumber("perRail", 1, MOST_SCREWS), fixing::perRail);
  }

  private static Kind<Grain> grain() {
    return WordKinds.of(Grain.class, Grain::words);
  }
}
