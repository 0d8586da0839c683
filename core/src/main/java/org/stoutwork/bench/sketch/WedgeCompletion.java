package org.stoutwork.bench.sketch;

import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Unit;

/** Completes wedges: those driven into a tenon, and the loose one behind a leg. */
final class WedgeCompletion {

  /** Part of the strain of breaking to which a leaf of the tenon is spread by default. */
  private static final double SPREAD_STRAIN = 0.4 * 0.008;

  private static final double MOST_SPREAD = 1.5;
  private static final double USUAL_ANGLE = 5;
  private static final double USUAL_SLOPE = 6;

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

  /** Wedges in kerfs of two thirds of the tenon, from outside or, in a blind mortise, as foxes. */
  Fit driven(boolean glued, double tenonLength) {
    int wedges = sizes.count("wedges", sketch.wedges, 2);
    double kerf = Math.max(1, Math.rint(tenonLength * 2 / 3));
    double leaf =
        sketch
                .tenonHeight
                .map(h -> h.mm())
                .orElse(TenonProportions.forRail(place.members()).height())
            / (wedges + 1);
    double spread = Math.min(SPREAD_STRAIN * kerf * kerf / (1.5 * leaf), MOST_SPREAD);
    return new Fit.Wedged(glued, wedges, degrees(USUAL_ANGLE), spread, kerf, 1.5);
  }

  Joint loose() {
    TenonCompletion tenon = new TenonCompletion(sizes, place, sketch);
    double height = tenon.height(TenonProportions.forRail(place.members()).height());
    double thickness = tenon.thickness(1);
    return new LooseWedgeTenon(
        height,
        thickness,
        tenon.shoulder(height, 0),
        sizes.mm("relish", sketch.relish, 1.5 * thickness + 25, "a usual end beyond the wedge"),
        sizes.mm(
            "wedgeThickness",
            sketch.wedgeThickness,
            Math.max(12, thickness),
            "as thick as the tenon"),
        sizes.mm("wedgeWidth", sketch.wedgeWidth, thickness * 0.4, "two fifths of the tenon"),
        degrees(USUAL_SLOPE));
  }
}
