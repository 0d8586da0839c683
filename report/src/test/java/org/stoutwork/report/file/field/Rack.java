package org.stoutwork.report.file.field;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;
import org.stoutwork.quantity.Unit;

/** A made-up thing with keys of every kind, for the tests of this room. */
record Rack(
    String name,
    Duty duty,
    int count,
    boolean wedged,
    double slip,
    double moisture,
    Optional<Mass> load,
    Leg leg,
    List<Length> shelves,
    Map<String, Length> pegs) {

  enum Duty {
    LIGHT,
    EVERY_DAY
  }

  record Leg(Length width, Length depth) {
    Leg {
      if (depth.mm() > 3 * width.mm()) {
        throw new IllegalArgumentException(
            "depth " + depth.mm() + " mm is over three widths; turn the leg.");
      }
    }
  }

  static Got<Rack> read(Fields fields) {
    fields.ignore("remark");
    if (fields.has("units")) {
      fields
          .choice("units", Map.of("mm", Unit.MM, "in", Unit.IN))
          .required()
          .ifThere(fields::bareNumbersIn);
    }
    Got<String> name = fields.text("name").required();
    Got<Duty> duty = fields.choice("duty", Duty.class).orDefault(Duty.EVERY_DAY, "the usual duty");
    Got<Integer> count = fields.wholeNumber("count", 1, 8).orDefault(4, "racks have four legs");
    Got<Boolean> wedged = fields.yesNo("wedged").orDefault(false, "wedges are rare");
    Got<Double> slip = fields.number("slip", Range.between(0, 1)).orDefault(0.25, "a fair joint");
    Got<Double> moisture = fields.moisture("moisture", 4, 30).orDefault(12.0, "a heated room");
    Got<Optional<Mass>> load = fields.mass("load").optional();
    Got<Leg> leg = fields.map("leg", Rack::leg).required();
    Got<List<Length>> shelves =
        fields
            .scalars("shelves", Quantities.length().atLeast(Length.ofMm(6)).kind())
            .where(list -> list.size() <= 3, "a list of at most 3 lengths")
            .orDefault(List.of(Length.ofMm(18.25)), "one board");
    Got<Map<String, Length>> pegs =
        fields
            .entries("pegs", (peg, value) -> value.as(Quantities.length().kind()))
            .optional()
            .map(given -> given.orElse(Map.of()));
    return fields.build(
        () ->
            new Rack(
                name.get(),
                duty.get(),
                count.get(),
                wedged.get(),
                slip.get(),
                moisture.get(),
                load.get(),
                leg.get(),
                shelves.get(),
                pegs.get()));
  }

  private static Got<Leg> leg(Fields fields) {
    Got<Length> width =
        fields
            .quantity("width", Quantities.length().between(Length.ofMm(20), Length.ofMm(203.2)))
            .required();
    Got<Length> depth = fields.length("depth").orDefault(width, "legs are square unless stated");
    return fields.build(() -> new Leg(width.get(), depth.get()));
  }
}
