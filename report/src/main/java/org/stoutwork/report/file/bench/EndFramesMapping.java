package org.stoutwork.report.file.bench;

import java.util.List;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.EndFrameSketch;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Value;

/**
 * The end frames: one map for all of them, with a list of places, or a list of maps with what is
 * alike said once under {@code everyEndFrame}.
 */
final class EndFramesMapping {

  private static final String KEY = "endFrames";
  private static final String EVERY = "everyEndFrame";

  private final Lengths lengths;
  private final Places places;
  private final EndFrameMapping one;

  EndFramesMapping(Lengths lengths, Places places) {
    this.lengths = lengths;
    this.places = places;
    this.one = new EndFrameMapping(lengths);
  }

  void read(Fields file, BenchSketch sketch) {
    Take.part(file, EVERY, fields -> sketch.everyEndFrame(frame -> one.parts(fields, frame)));
    file.either(
            KEY,
            "a map of keys for all end frames alike, or a list of maps, one for each",
            value -> frames(file, value, sketch))
        .optional();
  }

  private Got<Boolean> frames(Fields file, Value value, BenchSketch sketch) {
    if (value.isList()) {
      Got<List<Boolean>> all =
          value.list(item -> item.map(fields -> listed(item.path().text(), fields, sketch)));
      return all.isThere() && all.get().isEmpty()
          ? value.note("is an empty list", Take.SOME + " is needed", "")
          : all.map(frames -> true);
    }
    if (!value.isMap()) {
      return value.fault(
          "a map of keys for all end frames alike, or a list of maps, is needed", "");
    }
    if (file.has(EVERY)) {
      file.fault(
          EVERY,
          "is given beside " + KEY + " that are one map",
          "that map already says what is alike; keep one of the two",
          "");
    }
    return value.map(fields -> alike(fields, sketch));
  }

  private Got<Boolean> alike(Fields fields, BenchSketch sketch) {
    places.endFramesAlike();
    Field<List<Length>> at =
        fields.either(
            "at",
            "a list of places such as `[270 mm, 1490 mm]`",
            value -> value.list(item -> item.as(lengths.place())));
    Take.value(
        at.where(all -> !all.isEmpty(), "a list of at least two places"),
        all -> all.forEach(place -> sketch.endFrame(frame -> frame.at(place))));
    sketch.everyEndFrame(frame -> one.parts(fields, frame));
    return Got.of(true);
  }

  private Got<Boolean> listed(String place, Fields fields, BenchSketch sketch) {
    places.endFrame(place);
    sketch.endFrame(frame -> listed(fields, frame));
    return Got.of(true);
  }

  private void listed(Fields fields, EndFrameSketch frame) {
    Take.value(fields.text("name"), frame::name);
    Take.value(lengths.place(fields, "at"), frame::at);
    one.parts(fields, frame);
  }
}
