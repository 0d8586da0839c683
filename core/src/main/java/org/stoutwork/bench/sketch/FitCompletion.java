package org.stoutwork.bench.sketch;

import org.stoutwork.fastener.Peg;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Length;

/** Completes how a tenon is held. */
final class FitCompletion {

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;

  FitCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
  }

  Fit complete(JointHold hold) {
    if (hold.wedged()) {
      return wedged(hold.glued());
    }
    if (hold.pegged()) {
      return pegged(hold);
    }
    return hold.glued() ? new Fit.Glued() : dry();
  }

  private Fit dry() {
    return new Fit.Dry(sketch.play.map(p -> p.mm()).orElse(0.0));
  }

  private Fit wedged(boolean glued) {
    int wedges = sizes.count("wedges", sketch.wedges, 2);
    double height =
        sketch
            .tenonHeight
            .map(h -> h.mm())
            .orElseGet(() -> TenonProportions.forRail(place.members()).height());
    Fit.Wedged usual = TenonProportions.wedges(glued, wedges, height, tenonLength());
    double kerf = sizes.mm("kerfDepth", sketch.kerfDepth, usual.kerf(), "two thirds of the tenon");
    double leaf =
        sizes.mm(
            "kerfFromEdge",
            sketch.kerfFromEdge,
            usual.leaf(),
            wedges == 1 ? "in the middle" : "a sixth of the height");
    double spread = spread(Math.max(0.1, Math.round(usual.spread() * 10) / 10.0));
    double flare = TenonProportions.flare(spread, kerf);
    return new Fit.Wedged(glued, wedges, leaf, usual.angle(), spread, kerf, flare);
  }

  /** Too small to be rounded to a millimetre. */
  private double spread(double usual) {
    Length byDefault = Length.ofMm(usual);
    return sizes
        .answers()
        .or(
            sizes.key() + ".wedgeSpread",
            sketch.wedgeSpread,
            byDefault,
            byDefault.toString(),
            "as far as such a leaf bends safely")
        .mm();
  }

  private double tenonLength() {
    return sketch.tenonLength.map(l -> l.mm()).orElse(place.postDepth());
  }

  private double fromShoulder(double diameter) {
    double length =
        sketch
            .tenonLength
            .map(l -> l.mm())
            .orElseGet(() -> TenonProportions.forRail(place.members()).length());
    return Math.max(1.5 * diameter, Math.min(2.5 * diameter, length - 3 * diameter));
  }

  private Fit pegged(JointHold hold) {
    double tenon = place.railThickness() / 3;
    double diameter =
        sizes.mm("pegDiameter", sketch.pegDiameter, Math.min(10, tenon * 0.7), "a usual peg");
    int pegs = sizes.count("pegs", sketch.pegs, 1);
    double fromShoulder =
        sizes.mm(
            "pegFromShoulder",
            sketch.pegFromShoulder,
            fromShoulder(diameter),
            "up to two and a half diameters, with three behind the peg");
    double offset =
        hold.drawbored() ? sketch.drawboreOffset.map(o -> o.mm()).orElse(0.1 * diameter) : 0;
    double spacing = pegs > 1 ? 3 * diameter : 0;
    return new Fit.Pegged(
        hold.glued(), new Peg(diameter, TenonProportions.OAK), pegs, offset, fromShoulder, spacing);
  }
}
