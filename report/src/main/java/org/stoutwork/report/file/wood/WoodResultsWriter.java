package org.stoutwork.report.file.wood;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.wood.Wood;

/** Writes woods as JSON: numbers are plain, the unit of each key is stated once. */
public final class WoodResultsWriter {

  /** The number that the JSON carries as {@code schemaVersion}. */
  public static final int SCHEMA_VERSION = 1;

  private WoodResultsWriter() {}

  /**
   * Writes woods with all that is known of them.
   *
   * @param woods in the order in which they are written
   * @param choices those among them that were taken for a name which others bear too
   * @param moisture content at which means are wanted as well, %
   * @return the text, ending in a newline
   */
  public static String json(List<Wood> woods, List<Pick> choices, OptionalDouble moisture) {
    Map<String, String> units = new LinkedHashMap<>();
    for (Wood wood : woods) {
      WoodFacts.of(wood, moisture)
          .forEach(fact -> units.putIfAbsent(fact.key(), fact.property().unit().symbol()));
    }
    return JsonOut.object(
        out -> {
          out.put("schemaVersion", SCHEMA_VERSION);
          out.object("units", u -> units.forEach((key, unit) -> u.put(key, symbol(unit))));
          if (!choices.isEmpty()) {
            out.objects("choices", choices, WoodResultsWriter::choice);
          }
          out.objects("woods", woods, (one, wood) -> wood(one, wood, moisture));
        });
  }

  private static String symbol(String unit) {
    return unit.isEmpty() ? "1" : unit;
  }

  private static void wood(JsonOut out, Wood wood, OptionalDouble moisture) {
    out.put("key", wood.key());
    out.put("name", wood.name());
    out.texts("names", wood.names());
    out.put("kind", wood.kind());
    out.put("product", wood.product().words());
    out.objects("properties", WoodFacts.of(wood, moisture), WoodResultsWriter::fact);
  }

  private static void choice(JsonOut out, Pick pick) {
    out.put("asked", pick.asked());
    out.put("shown", pick.wood().key());
    out.texts("couldAlsoBe", pick.others().stream().map(Wood::key).toList());
  }

  private static void fact(JsonOut out, WoodFact fact) {
    out.put("key", fact.key());
    out.put("meaning", fact.meaning());
    if (!fact.state().isEmpty()) {
      out.put("state", fact.state());
    }
    out.put("value", fact.property().value());
    out.put("source", source(fact));
    out.put("mark", fact.property().mark().words());
  }

  private static String source(WoodFact fact) {
    String place = fact.property().source().place();
    String document = fact.property().source().document();
    return place.isEmpty() ? document : document + ", " + place;
  }
}
