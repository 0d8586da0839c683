package org.stoutwork.report.file.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.bench.GluedEdge;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.StretcherSketch;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;

/**
 * The stretchers; one entry with {@code line: both} stands for one in front and one at the back.
 */
final class StretcherMapping {

  private final Lengths lengths;
  private final Places places;
  private final JointMapping joints;

  StretcherMapping(Lengths lengths, Places places) {
    this.lengths = lengths;
    this.places = places;
    this.joints = new JointMapping(lengths);
  }

  void read(Fields file, BenchSketch sketch) {
    Take.someParts(file, "stretchers", (place, fields) -> entry(place, fields, sketch));
  }

  private void entry(String place, Fields fields, BenchSketch sketch) {
    List<StretcherLine> lines =
        fields.scalar("line", line()).optional().orElse(Optional.empty()).orElse(List.of());
    if (lines.isEmpty()) {
      one(place, sketch, fields, Optional.empty(), false);
    }
    lines.forEach(line -> one(place, sketch, fields, Optional.of(line), lines.size() > 1));
  }

  private void one(
      String place,
      BenchSketch sketch,
      Fields fields,
      Optional<StretcherLine> line,
      boolean isOneOfTwo) {
    places.stretcher(place);
    sketch.stretcher(
        stretcher -> {
          line.ifPresent(stretcher::line);
          String before = isOneOfTwo ? line.map(l -> l.words() + " ").orElse("") : "";
          Take.value(fields.text("name"), name -> stretcher.name(before + name));
          parts(fields, stretcher);
        });
  }

  private static Kind<List<StretcherLine>> line() {
    Map<String, List<StretcherLine>> words = new LinkedHashMap<>();
    for (StretcherLine line : StretcherLine.values()) {
      words.put(line.words(), List.of(line));
    }
    words.put("both", List.of(StretcherLine.FRONT, StretcherLine.BACK));
    return WordKinds.of(words);
  }

  private void parts(Fields fields, StretcherSketch stretcher) {
    Take.value(fields.text("wood"), stretcher::wood);
    Take.value(lengths.size(fields, "thickness"), stretcher::thickness);
    Take.value(lengths.size(fields, "depth"), stretcher::depth);
    Take.value(lengths.place(fields, "topEdgeAt"), stretcher::topEdgeAt);
    Take.value(lengths.place(fields, "bottomEdgeAt"), stretcher::bottomEdgeAt);
    Take.value(lengths.place(fields, "centreAt"), stretcher::centreAt);
    Take.value(lengths.size(fields, "endDepth"), stretcher::endDepth);
    Take.value(lengths.size(fields, "endLength"), stretcher::endLength);
    Take.value(
        fields.scalar("endPiece", WordKinds.of(GluedEdge.class, GluedEdge::words)),
        stretcher::endPiece);
    Take.value(HoldKind.field(fields, "hold", lengths), stretcher::hold);
    joints.read(fields, stretcher::joint);
  }
}
