package org.stoutwork.report.file.bench;

import java.util.Map;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.DogHolesSketch;
import org.stoutwork.bench.sketch.EndCapSketch;
import org.stoutwork.bench.sketch.FixingSketch;
import org.stoutwork.bench.sketch.LayerSketch;
import org.stoutwork.bench.sketch.LippingSketch;
import org.stoutwork.bench.sketch.TopSketch;
import org.stoutwork.quantity.Force;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Quantities;

/** The top with its layers and its screws. */
final class TopMapping {

  private static final int MOST_SCREWS = 20;
  private static final int MOST_HOLES = 200;
  private static final Kind<FixingScrew> SCREW =
      WordKinds.of(FixingScrew.class, FixingScrew::words);
  private static final Kind<TopHeld> HELD = WordKinds.of(TopHeld.class, TopHeld::words);
  private static final Kind<Boolean> CAP_HOLD =
      WordKinds.of(Map.of("glued", true, "glued in the middle", false));
  private static final Kind<Boolean> LIPPING_HOLD =
      WordKinds.of(Map.of("glued", false, "nailed", true));
  private static final Kind<Lipping.Edges> EDGES =
      WordKinds.of(Lipping.Edges.class, Lipping.Edges::words);

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
    Take.part(fields, "endCap", cap -> top.endCap(sketch -> endCap(cap, sketch)));
    Take.someParts(
        fields, "dogHoles", (place, row) -> top.dogHoles(sketch -> dogHoles(row, sketch)));
    Take.part(fields, "lipping", lip -> top.lipping(sketch -> lipping(lip, sketch)));
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
    Take.value(lengths.size(fields, "slotWidth"), fixing::slotWidth);
    Take.value(lengths.size(fields, "slotLength"), fixing::slotLength);
    Take.value(fields.scalar("heldAt", HELD), fixing::heldAt);
    Take.value(fields.scalar("screw", SCREW), fixing::screw);
    Take.value(lengths.place(fields, "pilotDiameter"), fixing::pilotDiameter);
    Take.value(lengths.size(fields, "washerDiameter"), fixing::washerDiameter);
    Take.value(fields.wholeNumber("perRail", 1, MOST_SCREWS), fixing::perRail);
  }

  private void endCap(Fields fields, EndCapSketch cap) {
    Take.value(lengths.size(fields, "width"), cap::width);
    Take.value(fields.scalar("hold", CAP_HOLD), cap::glued);
    Take.value(lengths.place(fields, "slot"), cap::slot);
  }

  private void dogHoles(Fields fields, DogHolesSketch row) {
    Take.value(
        fields.scalar("shape", WordKinds.of(DogHoles.Shape.class, DogHoles.Shape::words)),
        row::shape);
    Take.value(lengths.size(fields, "size"), row::size);
    Take.value(lengths.size(fields, "spacing"), row::spacing);
    Take.value(lengths.size(fields, "fromFront"), row::fromFront);
    Take.value(lengths.size(fields, "fromLeft"), row::fromLeft);
    Take.value(fields.wholeNumber("count", 1, MOST_HOLES), row::count);
    Take.value(
        fields.quantity("clampForce", Quantities.force().atLeast(Force.ofNewtons(0))),
        row::clampForce);
  }

  private void lipping(Fields fields, LippingSketch lipping) {
    Take.value(fields.scalar("edges", EDGES), lipping::edges);
    Take.value(lengths.size(fields, "thickness"), lipping::thickness);
    Take.value(fields.scalar("hold", LIPPING_HOLD), lipping::nailed);
    Take.value(lengths.size(fields, "nailDiameter"), lipping::nailDiameter);
    Take.value(lengths.size(fields, "nailLength"), lipping::nailLength);
    Take.value(lengths.size(fields, "nailSpacing"), lipping::nailSpacing);
    Take.value(lengths.place(fields, "pilotDiameter"), lipping::pilotDiameter);
  }

  private static Kind<Grain> grain() {
    return WordKinds.of(Grain.class, Grain::words);
  }
}
