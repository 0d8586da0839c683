package org.stoutwork.report.file.bench;

import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.sketch.ActionSketch;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.ViseSketch;
import org.stoutwork.bench.sketch.WeightKind;
import org.stoutwork.bench.sketch.WeightSketch;
import org.stoutwork.quantity.Force;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Quantities;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.wood.time.CumulativeLoad;
import org.stoutwork.wood.time.DurationClass;

/** What is fixed to the bench, stays on it or acts on it: vises, weights, actions. */
final class ExtrasMapping {

  private final Lengths lengths;
  private final Places places;

  ExtrasMapping(Lengths lengths, Places places) {
    this.lengths = lengths;
    this.places = places;
  }

  void read(Fields file, BenchSketch sketch) {
    Take.parts(
        file,
        "vises",
        (place, fields) -> {
          places.vise(place);
          sketch.vise(vise -> vise(fields, vise));
        });
    Take.parts(
        file,
        "weights",
        (place, fields) -> {
          places.weight(place);
          sketch.weight(weight -> weight(fields, weight));
        });
    Take.parts(
        file,
        "actions",
        (place, fields) -> {
          places.action(place);
          sketch.action(action -> action(fields, action));
        });
  }

  private void vise(Fields fields, ViseSketch vise) {
    Take.value(fields.text("name"), vise::name);
    Take.value(fields.scalar("edge", WordKinds.of(Edge.class, Edge::words)), vise::edge);
    Take.value(lengths.place(fields, "at"), vise::at);
    Take.value(fields.mass("mass"), vise::mass);
    Take.value(lengths.place(fields, "outreach"), vise::outreach);
    Take.value(lengths.size(fields, "jawWidth"), vise::jawWidth);
    Take.value(
        fields.quantity("clampForce", Quantities.force().atLeast(Force.ofNewtons(0))),
        vise::clampForce);
  }

  private void weight(Fields fields, WeightSketch weight) {
    Take.value(fields.text("name"), weight::name);
    Take.value(
        fields.scalar("lies", WordKinds.of(WeightKind.class, WeightKind::words)), weight::kind);
    Take.value(fields.mass("mass"), weight::mass);
    Take.value(lengths.place(fields, "x"), weight::x);
    Take.value(lengths.place(fields, "y"), weight::y);
    Take.value(lengths.place(fields, "centreAbove"), weight::centreAbove);
    Take.value(lengths.place(fields, "baseAlong"), weight::baseAlong);
    Take.value(lengths.place(fields, "baseAcross"), weight::baseAcross);
    Take.value(fields.yesNo("reciprocating"), weight::reciprocating);
    Take.value(fields.map("stays", ExtrasMapping::times), weight::stays);
    Take.value(
        fields.list("shaftRates", rate -> rate.as(ShaftRate.KIND)),
        rates -> rates.forEach(weight::rateHz));
  }

  private static Got<CumulativeLoad> times(Fields fields) {
    Got<Double> hours = fields.number("hoursPerDay", Range.between(0.001, 24)).required();
    Got<Double> days = fields.number("daysPerYear", Range.between(0.1, 365.25)).required();
    Got<Double> years = fields.number("years", Range.between(0.1, 200)).required();
    return fields.build(() -> new CumulativeLoad(hours.get(), days.get(), years.get()));
  }

  private static void action(Fields fields, ActionSketch action) {
    fields
        .scalar("kind", WordKinds.of(ActionKind.class, ActionKind::words))
        .required()
        .ifThere(action::kind);
    Take.value(fields.text("name"), action::name);
    fields.force("force").required().ifThere(action::force);
    Take.value(
        fields.scalar("duration", WordKinds.of(DurationClass.class, DurationClass::words)),
        action::duration);
    Take.value(fields.map("acts", ExtrasMapping::times), action::acts);
  }
}
