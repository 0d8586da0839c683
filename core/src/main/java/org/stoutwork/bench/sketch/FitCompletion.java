package org.stoutwork.bench.sketch;

import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.PegWood;
import org.stoutwork.joint.Fit;

/** Completes how a tenon is held. */
final class FitCompletion {

  /** A usual peg: straight-grained oak, means from handbook tables of white oak. */
  static final PegWood OAK = new PegWood("oak", 12_000, 100, 0.68, 760);

  private static final double WEDGE_DEGREES = 6;
  private static final double FLARE_DEGREES = 2;

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
    double kerf = 0.7 * Math.min(place.postDepth(), tenonLength());
    double spread = 0.5 * kerf * Math.toRadians(WEDGE_DEGREES) * 0.5;
    return new Fit.Wedged(glued, wedges, WEDGE_DEGREES, spread, kerf, FLARE_DEGREES);
  }

  private double tenonLength() {
    return sketch.tenonLength.map(l -> l.mm()).orElse(place.postDepth());
  }

  private Fit pegged(JointHold hold) {
    double tenon = place.railThickness() / 3;
    double diameter =
        sizes.mm("pegDiameter", sketch.pegDiameter, Math.min(10, tenon * 0.7), "a usual peg");
    int pegs = sizes.count("pegs", sketch.pegs, 1);
    double fromShoulder =
        sizes.mm(
            "pegFromShoulder", sketch.pegFromShoulder, 1.5 * diameter, "one and a half diameters");
    double offset =
        hold.drawbored() ? sketch.drawboreOffset.map(o -> o.mm()).orElse(0.1 * diameter) : 0;
    double spacing = pegs > 1 ? 3 * diameter : 0;
    return new Fit.Pegged(
        hold.glued(), new Peg(diameter, OAK), pegs, offset, fromShoulder, spacing);
  }
}
