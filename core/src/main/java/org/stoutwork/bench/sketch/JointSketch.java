package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.fastener.BoltClass;
import org.stoutwork.fastener.HoleFit;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.RotationalStiffness;

/**
 * What a maker says of a joint: its kind, and as many of its sizes as matter.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class JointSketch {

  Optional<JointKind> kind = Optional.empty();
  Optional<JointHold> hold = Optional.empty();
  Optional<Length> tenonHeight = Optional.empty();
  Optional<Length> tenonThickness = Optional.empty();
  Optional<Length> tenonLength = Optional.empty();
  Optional<Length> shoulderBelow = Optional.empty();
  Optional<Integer> tenons = Optional.empty();
  Optional<Boolean> through = Optional.empty();
  Optional<Length> haunchHeight = Optional.empty();
  Optional<Length> haunchLength = Optional.empty();
  Optional<Length> play = Optional.empty();
  Optional<Integer> wedges = Optional.empty();
  Optional<Length> kerfDepth = Optional.empty();
  Optional<Length> kerfFromEdge = Optional.empty();
  Optional<Length> wedgeSpread = Optional.empty();
  Optional<Length> pegDiameter = Optional.empty();
  Optional<Integer> pegs = Optional.empty();
  Optional<Length> drawboreOffset = Optional.empty();
  Optional<Length> pegFromShoulder = Optional.empty();
  Optional<Integer> bolts = Optional.empty();
  Optional<Length> boltDiameter = Optional.empty();
  Optional<Length> boltSpacing = Optional.empty();
  Optional<Length> nutFromEnd = Optional.empty();
  Optional<Force> preload = Optional.empty();
  Optional<Integer> dowels = Optional.empty();
  Optional<Length> dowelDiameter = Optional.empty();
  Optional<FixingScrew> screw = Optional.empty();
  Optional<Integer> screws = Optional.empty();
  Optional<Length> screwDiameter = Optional.empty();
  Optional<Length> screwLength = Optional.empty();
  Optional<Length> screwFromEdge = Optional.empty();
  Optional<Length> screwPilot = Optional.empty();
  Optional<Length> lapDepth = Optional.empty();
  Optional<Angle> wedgeAngle = Optional.empty();
  Optional<Length> relish = Optional.empty();
  Optional<Length> wedgeThickness = Optional.empty();
  Optional<Length> wedgeWidth = Optional.empty();
  Optional<BoltClass> boltClass = Optional.empty();
  Optional<HoleFit> boltHole = Optional.empty();
  Optional<Length> washerDiameter = Optional.empty();
  Optional<NutKind> nut = Optional.empty();
  Optional<Length> dowelLength = Optional.empty();
  Optional<RotationalStiffness> stiffnessLow = Optional.empty();
  Optional<RotationalStiffness> stiffnessMean = Optional.empty();
  Optional<RotationalStiffness> stiffnessHigh = Optional.empty();

  /** Sets the kind. */
  public JointSketch kind(JointKind value) {
    kind = Optional.of(value);
    return this;
  }

  /** Sets how it is held. */
  public JointSketch hold(JointHold value) {
    hold = Optional.of(value);
    return this;
  }

  /** Sets the height of the tenon along the depth of its piece. */
  public JointSketch tenonHeight(Length value) {
    tenonHeight = Optional.of(value);
    return this;
  }

  /** Sets the thickness of the tenon. */
  public JointSketch tenonThickness(Length value) {
    tenonThickness = Optional.of(value);
    return this;
  }

  /** Sets the length of the tenon into the mortise. */
  public JointSketch tenonLength(Length value) {
    tenonLength = Optional.of(value);
    return this;
  }

  /** Sets the shoulder below the tenon. */
  public JointSketch shoulderBelow(Length value) {
    shoulderBelow = Optional.of(value);
    return this;
  }

  /** Sets how many tenons stand side by side, 1 or 2. */
  public JointSketch tenons(int value) {
    tenons = Optional.of(value);
    return this;
  }

  /** Sets whether the mortise goes through. */
  public JointSketch through(boolean value) {
    through = Optional.of(value);
    return this;
  }

  /** Sets the height of the haunch. */
  public JointSketch haunchHeight(Length value) {
    haunchHeight = Optional.of(value);
    return this;
  }

  /** Sets the length of the haunch. */
  public JointSketch haunchLength(Length value) {
    haunchLength = Optional.of(value);
    return this;
  }

  /** Sets the total play of a dry tenon. */
  public JointSketch play(Length value) {
    play = Optional.of(value);
    return this;
  }

  /** Sets how many wedges spread the tenon, 1 or 2. */
  public JointSketch wedges(int value) {
    wedges = Optional.of(value);
    return this;
  }

  /** Sets how deep the kerfs for the wedges are sawn into the tenon. */
  public JointSketch kerfDepth(Length value) {
    kerfDepth = Optional.of(value);
    return this;
  }

  /** Sets how far from the tenon's edges the kerfs are. */
  public JointSketch kerfFromEdge(Length value) {
    kerfFromEdge = Optional.of(value);
    return this;
  }

  /** Sets how far a wedge bends the tenon beside it outwards. */
  public JointSketch wedgeSpread(Length value) {
    wedgeSpread = Optional.of(value);
    return this;
  }

  /** Sets the diameter of a peg. */
  public JointSketch pegDiameter(Length value) {
    pegDiameter = Optional.of(value);
    return this;
  }

  /** Sets how many pegs there are. */
  public JointSketch pegs(int value) {
    pegs = Optional.of(value);
    return this;
  }

  /** Sets the drawbore offset. */
  public JointSketch drawboreOffset(Length value) {
    drawboreOffset = Optional.of(value);
    return this;
  }

  /** Sets the distance of the pegs from the shoulder. */
  public JointSketch pegFromShoulder(Length value) {
    pegFromShoulder = Optional.of(value);
    return this;
  }

  /** Sets how many bed bolts there are, 1 or 2. */
  public JointSketch bolts(int value) {
    bolts = Optional.of(value);
    return this;
  }

  /** Sets the diameter of a bolt. */
  public JointSketch boltDiameter(Length value) {
    boltDiameter = Optional.of(value);
    return this;
  }

  /** Sets the distance of two bolts. */
  public JointSketch boltSpacing(Length value) {
    boltSpacing = Optional.of(value);
    return this;
  }

  /** Sets the distance of the nut from the end of its piece. */
  public JointSketch nutFromEnd(Length value) {
    nutFromEnd = Optional.of(value);
    return this;
  }

  /** Sets the preload that a bolt keeps. */
  public JointSketch preload(Force value) {
    preload = Optional.of(value);
    return this;
  }

  /** Sets how many dowels there are. */
  public JointSketch dowels(int value) {
    dowels = Optional.of(value);
    return this;
  }

  /** Sets the diameter of a dowel. */
  public JointSketch dowelDiameter(Length value) {
    dowelDiameter = Optional.of(value);
    return this;
  }

  /** Sets the kind of screw. */
  public JointSketch screw(FixingScrew value) {
    screw = Optional.of(value);
    return this;
  }

  /** Sets how many screws there are. */
  public JointSketch screws(int value) {
    screws = Optional.of(value);
    return this;
  }

  /** Sets the diameter of a screw over its thread. */
  public JointSketch screwDiameter(Length value) {
    screwDiameter = Optional.of(value);
    return this;
  }

  /** Sets the whole length of a screw. */
  public JointSketch screwLength(Length value) {
    screwLength = Optional.of(value);
    return this;
  }

  /** Sets how far the outermost screws stand from the edges of their piece. */
  public JointSketch screwFromEdge(Length value) {
    screwFromEdge = Optional.of(value);
    return this;
  }

  /** Sets the diameter of the hole drilled for the thread of a screw; 0 for none. */
  public JointSketch screwPilot(Length value) {
    screwPilot = Optional.of(value);
    return this;
  }

  boolean namesScrews() {
    return screws.isPresent() || screwDiameter.isPresent() || screwLength.isPresent();
  }

  /** Sets the thickness that a lap leaves, or the depth of a housing. */
  public JointSketch lapDepth(Length value) {
    lapDepth = Optional.of(value);
    return this;
  }

  /** Sets the lowest stiffness, stated by you. */
  public JointSketch stiffnessLow(RotationalStiffness value) {
    stiffnessLow = Optional.of(value);
    return this;
  }

  /** Sets the mean stiffness, stated by you. */
  public JointSketch stiffnessMean(RotationalStiffness value) {
    stiffnessMean = Optional.of(value);
    return this;
  }

  /** Sets the highest stiffness, stated by you. */
  public JointSketch stiffnessHigh(RotationalStiffness value) {
    stiffnessHigh = Optional.of(value);
    return this;
  }

  /** Sets the included angle of a wedge, or the slope of a loose wedge. */
  public JointSketch wedgeAngle(Angle value) {
    wedgeAngle = Optional.of(value);
    return this;
  }

  /** Sets the length of tenon beyond a loose wedge. */
  public JointSketch relish(Length value) {
    relish = Optional.of(value);
    return this;
  }

  /** Sets the thickness of a loose wedge along the tenon, at mid-height. */
  public JointSketch wedgeThickness(Length value) {
    wedgeThickness = Optional.of(value);
    return this;
  }

  /** Sets the width of a loose wedge across the tenon. */
  public JointSketch wedgeWidth(Length value) {
    wedgeWidth = Optional.of(value);
    return this;
  }

  /** Sets the property class of a bolt. */
  public JointSketch boltClass(BoltClass value) {
    boltClass = Optional.of(value);
    return this;
  }

  /** Sets how wide the hole of a bolt is. */
  public JointSketch boltHole(HoleFit value) {
    boltHole = Optional.of(value);
    return this;
  }

  /** Sets the diameter of the washer under the head of a bolt. */
  public JointSketch washerDiameter(Length value) {
    washerDiameter = Optional.of(value);
    return this;
  }

  /** Sets what a bed bolt is screwed into. */
  public JointSketch nut(NutKind value) {
    nut = Optional.of(value);
    return this;
  }

  /** Sets the whole length of a dowel, half of it in each piece. */
  public JointSketch dowelLength(Length value) {
    dowelLength = Optional.of(value);
    return this;
  }
}
