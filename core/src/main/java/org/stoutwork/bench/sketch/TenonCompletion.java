package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Length;

/** Completes tenons and what is made like them, by the proportions of the trade. */
final class TenonCompletion {

  /** Part of a post that a tenon takes where another faces it. */
  private static final double FACING = 0.45;

  private static final double SHORTEST_STUB = 12;

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;
  private final TenonProportions usual;

  TenonCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
    this.usual = TenonProportions.forRail(place.members());
  }

  Joint tenon(JointKind kind, JointHold hold, Fit fit) {
    boolean wedgedFromOutside = fit instanceof Fit.Wedged && !hold.fox();
    boolean through = sketch.through.orElse(kind == JointKind.THROUGH_TENON || wedgedFromOutside);
    int count = sizes.count("tenons", sketch.tenons, kind == JointKind.TWIN_TENON ? 2 : 1);
    double haunch = haunchHeight(kind);
    double height = height(usualHeight(kind, haunch));
    double length = length(kind, through);
    Optional<MortiseAndTenon.Haunch> stepped =
        haunch > 0 ? Optional.of(haunch(haunch, length)) : Optional.empty();
    return new MortiseAndTenon(
        height,
        thickness(count),
        length,
        shoulder(height, haunch),
        0,
        count,
        through,
        stepped,
        fit);
  }

  /**
   * A length that is taken where none is given.
   *
   * @param mm from the shoulder
   * @param reason in words
   */
  private record UsualLength(double mm, String reason) {}

  private double length(JointKind kind, boolean through) {
    UsualLength taken = usualLength(kind, through);
    return sizes.mm("tenonLength", sketch.tenonLength, taken.mm(), taken.reason());
  }

  /** The length that the tenon has or will be given, mm. */
  double lengthToBe(JointKind kind, boolean through) {
    return sketch
        .tenonLength
        .map(Length::mm)
        .orElseGet(() -> (double) Math.round(usualLength(kind, through).mm()));
  }

  private UsualLength usualLength(JointKind kind, boolean through) {
    if (through) {
      return new UsualLength(place.postDepth(), "through the whole post");
    }
    if (kind == JointKind.STUB_TENON) {
      return new UsualLength(
          Math.max(SHORTEST_STUB, place.postDepth() / 4), "a stub: a quarter of the leg");
    }
    double half = Math.floor(place.postDepth() * FACING);
    return place.facing() && half < usual.length()
        ? new UsualLength(half, "short of the one that comes from behind")
        : new UsualLength(usual.length(), "seven tenths of the leg");
  }

  double height(double byDefault) {
    return sizes.mm(
        "tenonHeight",
        sketch.tenonHeight,
        byDefault,
        "shoulders a sixth of the depth, 5 mm to 25 mm");
  }

  /** Below a haunch that was not given in words stands a tenon with its usual lower shoulder. */
  private double usualHeight(JointKind kind, double haunch) {
    return kind == JointKind.HAUNCHED_TENON
        ? place.railDepth() - haunch - usual.shoulder()
        : usual.height();
  }

  double thickness(int count) {
    double part = count == 2 ? usual.thickness() * 0.6 : usual.thickness();
    return sizes.mm("tenonThickness", sketch.tenonThickness, part, "a third of the thinner piece");
  }

  double shoulder(double height, double haunch) {
    double left = place.railDepth() - height - haunch;
    boolean whole = haunch > 0 && sketch.haunchHeight.isEmpty();
    return sketch.shoulderBelow.map(s -> s.mm()).orElse(Math.max(0, whole ? left : left / 2));
  }

  private double haunchHeight(JointKind kind) {
    if (kind == JointKind.HAUNCHED_TENON) {
      return sizes.mm(
          "haunchHeight", sketch.haunchHeight, place.railDepth() / 4, "a quarter of the depth");
    }
    return sketch.haunchHeight.map(h -> h.mm()).orElse(0.0);
  }

  private MortiseAndTenon.Haunch haunch(double height, double length) {
    double l =
        sizes.mm("haunchLength", sketch.haunchLength, Math.min(12, length), "a usual haunch");
    return new MortiseAndTenon.Haunch(height, l);
  }
}
