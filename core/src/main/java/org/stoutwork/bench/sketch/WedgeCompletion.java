package org.stoutwork.bench.sketch;

import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Unit;

/** Completes wedges: those driven into a tenon, and the loose one behind a leg. */
final class WedgeCompletion {

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;

  WedgeCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
  }

  private double degrees(double usual) {
    Angle byDefault = Angle.of(usual, Unit.DEG);
    return sizes
            .answers()
            .or(
                sizes.key() + ".wedgeAngle",
                sketch.wedgeAngle,
                byDefault,
                byDefault.toString(),
                "a usual wedge")
            .rad()
        * 180
        / Math.PI;
  }

  /** Wedges in kerfs, from outside or, in a blind mortise, as foxes. */
  Fit driven(boolean glued, double tenonLength) {
    int wedges = sizes.count("wedges", sketch.wedges, 2);
    double height =
        sketch
            .tenonHeight
            .map(h -> h.mm())
            .orElseGet(() -> TenonProportions.forRail(place.members()).height());
    Fit.Wedged usual = TenonProportions.wedges(glued, wedges, height, tenonLength);
    double kerf = sizes.mm("kerfDepth", sketch.kerfDepth, usual.kerf(), "two thirds of the tenon");
    double leaf =
        sizes.mm(
            "kerfFromEdge",
            sketch.kerfFromEdge,
            usual.leaf(),
            wedges == 1 ? "in the middle" : "a sixth of the height");
    double spread = spread(Math.max(0.1, Math.round(usual.spread() * 10) / 10.0));
    double flare = TenonProportions.flare(spread, kerf);
    return new Fit.Wedged(glued, wedges, leaf, degrees(usual.angle()), spread, kerf, flare);
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

  Joint loose() {
    TenonCompletion tenon = new TenonCompletion(sizes, place, sketch);
    double height = tenon.height(TenonProportions.forRail(place.members()).height());
    double thickness = tenon.thickness(1);
    LooseWedgeTenon usual =
        TenonProportions.looseWedge(height, thickness, tenon.shoulder(height, 0));
    return new LooseWedgeTenon(
        height,
        thickness,
        usual.shoulderBelow(),
        sizes.mm("relish", sketch.relish, usual.relish(), "a usual end beyond the wedge"),
        sizes.mm(
            "wedgeThickness",
            sketch.wedgeThickness,
            usual.wedgeThickness(),
            "as thick as the tenon, 12 mm at least"),
        sizes.mm("wedgeWidth", sketch.wedgeWidth, usual.wedgeWidth(), "two fifths of the tenon"),
        degrees(usual.angle()));
  }
}
