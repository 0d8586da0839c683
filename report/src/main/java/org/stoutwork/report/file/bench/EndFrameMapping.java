package org.stoutwork.report.file.bench;

import java.util.Map;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lamination;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.sketch.EndFrameSketch;
import org.stoutwork.bench.sketch.FootSketch;
import org.stoutwork.bench.sketch.LegSketch;
import org.stoutwork.bench.sketch.RailSketch;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Value;

/** The parts of an end frame: legs, rails, foot. */
final class EndFrameMapping {

  private static final String NONE_OR_MAP = "none or a map of keys";

  private final Lengths lengths;
  private final JointMapping joints;

  EndFrameMapping(Lengths lengths) {
    this.lengths = lengths;
    this.joints = new JointMapping(lengths);
  }

  void parts(Fields fields, EndFrameSketch frame) {
    Take.part(fields, "legs", legs -> frame.legs(sketch -> legs(legs, sketch)));
    Take.part(fields, "topRail", rail -> frame.topRail(sketch -> topRail(rail, sketch)));
    fields.either("bottomRail", NONE_OR_MAP, value -> bottomRail(value, frame)).optional();
    Take.part(fields, "foot", foot -> frame.foot(sketch -> foot(foot, sketch)));
  }

  private void legs(Fields fields, LegSketch legs) {
    Take.value(fields.text("wood"), legs::wood);
    Take.value(lengths.size(fields, "along"), legs::along);
    Take.value(lengths.size(fields, "across"), legs::across);
    Take.value(lengths.place(fields, "frontInset"), legs::frontInset);
    Take.value(lengths.place(fields, "backInset"), legs::backInset);
    Take.value(fields.wholeNumber("laminations", 2, Lamination.MOST), legs::laminations);
    Take.value(
        fields.scalar("laminated", WordKinds.of(Grain.class, Grain::words)), legs::laminated);
  }

  private void topRail(Fields fields, RailSketch rail) {
    Take.value(fields.scalar("seat", seat()), rail::seat);
    Take.value(lengths.size(fields, "length"), rail::length);
    Take.value(lengths.place(fields, "proud"), rail::proud);
    rail(fields, rail);
  }

  private static Kind<Seat> seat() {
    return WordKinds.of(Seat.class, Seat::words);
  }

  private void rail(Fields fields, RailSketch rail) {
    Take.value(fields.text("wood"), rail::wood);
    Take.value(lengths.size(fields, "thickness"), rail::thickness);
    Take.value(lengths.size(fields, "depth"), rail::depth);
    Take.value(lengths.place(fields, "topEdgeAt"), rail::topEdgeAt);
    Take.value(lengths.place(fields, "bottomEdgeAt"), rail::bottomEdgeAt);
    Take.value(lengths.place(fields, "centreAt"), rail::centreAt);
    joints.read(fields, rail::joint);
  }

  private Got<Boolean> bottomRail(Value value, EndFrameSketch frame) {
    if (value.isMap()) {
      return value.map(
          fields -> Take.used(fields, rail -> frame.bottomRail(sketch -> rail(rail, sketch))));
    }
    Kind<Boolean> none = WordKinds.of(Map.of("none", true)).named(NONE_OR_MAP);
    Got<Boolean> got = value.as(none);
    got.ifThere(frame::withoutBottomRail);
    return got;
  }

  private void foot(Fields fields, FootSketch foot) {
    Take.value(fields.text("wood"), foot::wood);
    Take.value(lengths.size(fields, "thickness"), foot::thickness);
    Take.value(lengths.size(fields, "depth"), foot::depth);
    Take.value(lengths.size(fields, "length"), foot::length);
    Take.value(lengths.size(fields, "pad"), foot::pad);
    joints.read(fields, foot::joint);
  }
}
