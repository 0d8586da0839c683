package org.stoutwork.report.file.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.quantity.Length;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;

/**
 * How one piece is held on another over its length: {@code glued}, {@code loose}, or {@code
 * screwed: {diameter: 6 mm, spacing: 200 mm, rows: 2}}.
 */
final class HoldKind {

  private static final String NOUN = "glued, loose or a map such as `screwed: {diameter: 6 mm}`";
  private static final int MOST_ROWS = 20;

  private HoldKind() {}

  static Field<LayerHold> field(Fields fields, String key, Lengths lengths) {
    return fields.either(
        key,
        NOUN,
        value -> value.isMap() ? value.map(hold -> screwed(hold, lengths)) : value.as(words()));
  }

  private static Kind<LayerHold> words() {
    Map<String, LayerHold> words = new LinkedHashMap<>();
    words.put("glued", new LayerHold.Glued());
    words.put("loose", new LayerHold.Loose());
    return WordKinds.of(words).named(NOUN);
  }

  private static Got<LayerHold> screwed(Fields hold, Lengths lengths) {
    return hold.map("screwed", screws -> screws(screws, lengths)).required();
  }

  private static Got<LayerHold> screws(Fields fields, Lengths lengths) {
    Got<Length> diameter = lengths.size(fields, "diameter").required();
    Got<Length> spacing = lengths.size(fields, "spacing").required();
    Got<Integer> rows =
        fields.wholeNumber("rows", 1, MOST_ROWS).orDefault(1, "one row unless said otherwise");
    return fields.build(() -> new LayerHold.Screwed(diameter.get(), spacing.get(), rows.get()));
  }
}
