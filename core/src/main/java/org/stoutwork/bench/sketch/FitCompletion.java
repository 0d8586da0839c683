package org.stoutwork.bench.sketch;

import org.stoutwork.fastener.Peg;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.advice.TenonProportions;

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

  Fit complete(JointKind kind, JointHold hold) {
    if (hold.wedged()) {
      return new WedgeCompletion(sizes, place, sketch)
          .driven(hold.glued(), tenonLength(kind, hold));
    }
    if (hold.pegged()) {
      return pegged(kind, hold);
    }
    return hold.glued() ? new Fit.Glued() : dry();
  }

  private Fit dry() {
    return new Fit.Dry(sketch.play.map(p -> p.mm()).orElse(0.0));
  }

  private double tenonLength(JointKind kind, JointHold hold) {
    boolean fromOutside = hold.wedged() && !hold.fox();
    boolean through = sketch.through.orElse(kind == JointKind.THROUGH_TENON || fromOutside);
    return new TenonCompletion(sizes, place, sketch).lengthToBe(kind, through);
  }

  private double fromShoulder(double diameter, double length) {
    return Math.max(1.5 * diameter, Math.min(2.5 * diameter, length - 3 * diameter));
  }

  private Fit pegged(JointKind kind, JointHold hold) {
    double tenon = place.railThickness() / 3;
    double diameter =
        sizes.mm("pegDiameter", sketch.pegDiameter, Math.min(10, tenon * 0.7), "a usual peg");
    int pegs = sizes.count("pegs", sketch.pegs, 1);
    double fromShoulder =
        sizes.mm(
            "pegFromShoulder",
            sketch.pegFromShoulder,
            fromShoulder(diameter, tenonLength(kind, hold)),
            "up to two and a half diameters, with three behind the peg");
    double offset =
        hold.drawbored() ? sketch.drawboreOffset.map(o -> o.mm()).orElse(0.1 * diameter) : 0;
    double spacing = pegs > 1 ? 3 * diameter : 0;
    return new Fit.Pegged(
        hold.glued(), new Peg(diameter, TenonProportions.OAK), pegs, offset, fromShoulder, spacing);
  }
}
