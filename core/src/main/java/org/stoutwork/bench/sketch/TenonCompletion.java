package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Writing;

/** Completes tenons and what is made like them, by the proportions of the trade. */
final class TenonCompletion {

  private static final double STEEL_4_6 = 400;
  private static final double STUB = 15;
  private static final double KEPT_PRELOAD = 2000;

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

  Joint tenon(Fit fit) {
    boolean through = sketch.through.orElse(fit instanceof Fit.Wedged);
    int count = sizes.count("tenons", sketch.tenons, 1);
    double height = height();
    double thickness = thickness(count);
    double length =
        through
            ? sizes.mm(
                "tenonLength", sketch.tenonLength, place.postDepth(), "through the whole post")
            : sizes.mm(
                "tenonLength", sketch.tenonLength, usual.length(), "seven tenths of the leg");
    return new MortiseAndTenon(
        height, thickness, length, shoulder(height), 0, count, through, haunch(length), fit);
  }

  private double height() {
    return sizes.mm(
        "tenonHeight",
        sketch.tenonHeight,
        usual.height(),
        "shoulders a sixth of the depth, 5 mm to 25 mm");
  }

  private double thickness(int count) {
    double part = count == 2 ? usual.thickness() * 0.6 : usual.thickness();
    return sizes.mm("tenonThickness", sketch.tenonThickness, part, "a third of the thinner piece");
  }

  private double shoulder(double height) {
    double left = place.railDepth() - height - sketch.haunchHeight.map(h -> h.mm()).orElse(0.0);
    return sketch.shoulderBelow.map(s -> s.mm()).orElse(Math.max(0, left / 2));
  }

  private Optional<MortiseAndTenon.Haunch> haunch(double length) {
    return sketch.haunchHeight.map(
        h -> {
          double l =
              sizes.mm("haunchLength", sketch.haunchLength, Math.min(12, length), "a usual haunch");
          return new MortiseAndTenon.Haunch(h.mm(), l);
        });
  }

  Joint bolted() {
    double height = height();
    double thickness = thickness(1);
    double length = sizes.mm("tenonLength", sketch.tenonLength, STUB, "a usual stub");
    double diameter = sizes.mm("boltDiameter", sketch.boltDiameter, 10, "a usual bed bolt");
    BoltSize size = size(diameter);
    double washer = Math.min(3 * diameter, place.postThickness() - 4);
    Bolt bolt = new Bolt(size, STEEL_4_6, new Washer(washer, diameter + 1, 0.3 * diameter));
    int bolts = sizes.count("bolts", sketch.bolts, 1);
    double spacing =
        bolts == 2
            ? sizes.mm(
                "boltSpacing", sketch.boltSpacing, place.railDepth() / 2, "half of the depth")
            : 0;
    double fromEnd = sizes.mm("nutFromEnd", sketch.nutFromEnd, 60, "60 mm of wood before the nut");
    BoltedTenon.Nut nut =
        new BoltedTenon.Nut(1.6 * diameter, Math.min(place.railThickness(), 30), fromEnd, true);
    Force kept = Force.ofNewtons(KEPT_PRELOAD);
    Force preload =
        sizes
            .answers()
            .or(
                sizes.key() + ".preload",
                sketch.preload,
                kept,
                kept.toString(),
                "what a bolt keeps that is tightened again every season");
    return new BoltedTenon(
        height, thickness, length, shoulder(height), bolt, bolts, spacing, nut, preload.newtons());
  }

  private BoltSize size(double diameter) {
    for (BoltSize size : BoltSize.values()) {
      if (Math.abs(size.diameter() - diameter) < 0.5) {
        return size;
      }
    }
    sizes
        .answers()
        .fault(
            sizes.key() + ".boltDiameter",
            Writing.number(diameter, 4) + " mm",
            "bolts of 6, 8, 10, 12 and 16 mm are covered");
    return BoltSize.M10;
  }

  Joint looseWedge() {
    double height = height();
    double thickness = thickness(1);
    return new LooseWedgeTenon(
        height,
        thickness,
        shoulder(height),
        sizes.mm("relish", Optional.empty(), 1.5 * thickness + 25, "a usual end beyond the wedge"),
        Math.max(12, thickness),
        thickness * 0.4,
        6);
  }

  Joint dowelled() {
    int count = sizes.count("dowels", sketch.dowels, 2);
    double d =
        sizes.mm(
            "dowelDiameter",
            sketch.dowelDiameter,
            place.railThickness() / 3,
            "a third of the rail");
    double edge = Math.max(d, place.railDepth() * 0.2);
    double spacing = (place.railDepth() - 2 * edge) / (count - 1);
    double inPost = Math.min(place.postDepth() - 5, 4 * d);
    return new DowelledButt(
        new Peg(d, TenonProportions.BEECH), count, 4 * d, inPost, spacing, edge);
  }
}
