package org.stoutwork.bench.sketch;

import java.util.stream.DoubleStream;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltClass;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.HoleFit;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Writing;

/** Completes a stub tenon with bed bolts. */
final class BoltCompletion {

  private static final double STUB = 15;
  private static final double LEAST_SHOULDER = 3;
  private static final double KEPT_PRELOAD = 2000;
  private static final double WIDEST_NUT_BEARING = 30;

  private final JointCompletion.Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;

  BoltCompletion(JointCompletion.Sizes sizes, JointPlace place, JointSketch sketch) {
    this.sizes = sizes;
    this.place = place;
    this.sketch = sketch;
  }

  Joint bolted() {
    TenonCompletion tenon = new TenonCompletion(sizes, place, sketch);
    TenonProportions usual = TenonProportions.forRail(place.members());
    double height = tenon.height(usual.height());
    double length = sizes.mm("tenonLength", sketch.tenonLength, STUB, "a usual stub");
    Bolt bolt = bolt();
    double thickness = thickness(usual.thickness(), bolt.washer().hole());
    int bolts = sizes.count("bolts", sketch.bolts, 1);
    double spacing = bolts == 2 ? spacing(height, bolt) : 0;
    return new BoltedTenon(
        height,
        thickness,
        length,
        tenon.shoulder(height, 0),
        bolt,
        bolts,
        spacing,
        nut(bolt.diameter()),
        preload().newtons());
  }

  private double thickness(double third, double bore) {
    double byBore = BoltedTenon.usualThickness(bore);
    return byBore > third
        ? sizes.mm("tenonThickness", sketch.tenonThickness, byBore, "twice the bore of its bolt")
        : sizes.mm("tenonThickness", sketch.tenonThickness, third, "a third of the thinner piece");
  }

  /** Half of the depth, or closer so that a bore's width of tenon stays beyond each bolt. */
  private double spacing(double height, Bolt bolt) {
    double inside = Math.floor(height - 3 * bolt.washer().hole());
    double half = place.railDepth() / 2;
    return half <= inside || inside < 2 * bolt.diameter()
        ? sizes.mm("boltSpacing", sketch.boltSpacing, half, "half of the depth")
        : sizes.mm(
            "boltSpacing", sketch.boltSpacing, inside, "a bore's width of tenon beyond each bolt");
  }

  /** The largest usual bolt that leaves the piece shoulders beside a tenon twice its bore. */
  private double usualDiameter() {
    double room = Math.min(place.railThickness(), place.postThickness()) - 2 * LEAST_SHOULDER;
    return DoubleStream.of(10, 8, 6)
        .filter(d -> BoltedTenon.usualThickness(HoleFit.CLEARANCE.diameter(d)) <= room)
        .findFirst()
        .orElse(6);
  }

  private Bolt bolt() {
    double usual = usualDiameter();
    double diameter =
        sizes.mm(
            "boltDiameter",
            sketch.boltDiameter,
            usual,
            usual == 10 ? "a usual bed bolt" : "what a tenon in so thin a piece has room for");
    BoltClass steel =
        sizes.word("boltClass", sketch.boltClass, BoltClass.C4_6, BoltClass::words, "plain steel");
    HoleFit hole =
        sizes.word(
            "boltHole", sketch.boltHole, HoleFit.CLEARANCE, HoleFit::words, "the usual drill");
    double washer =
        sketch
            .washerDiameter
            .map(w -> w.mm())
            .orElse(Math.min(3 * diameter, place.postThickness() - 4));
    return new Bolt(
        size(diameter),
        steel.ultimate(),
        new Washer(washer, hole.diameter(diameter), 0.3 * diameter));
  }

  /** A barrel is a little wider than its bolt; a captive nut or its plate a good deal. */
  private BoltedTenon.Nut nut(double diameter) {
    double fromEnd = sizes.mm("nutFromEnd", sketch.nutFromEnd, 60, "60 mm of wood before the nut");
    NutKind kind =
        sizes.word("nut", sketch.nut, NutKind.BARREL, NutKind::words, "the usual hardware");
    double across = Math.min(place.railThickness(), WIDEST_NUT_BEARING);
    return kind == NutKind.BARREL
        ? new BoltedTenon.Nut(1.6 * diameter, across, fromEnd, true)
        : new BoltedTenon.Nut(1.7 * diameter, Math.min(across, 1.7 * diameter), fromEnd, false);
  }

  private Force preload() {
    Force kept = Force.ofNewtons(KEPT_PRELOAD);
    return sizes
        .answers()
        .or(
            sizes.key() + ".preload",
            sketch.preload,
            kept,
            kept.toString(),
            "what a bolt keeps that is tightened again every season");
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
}
