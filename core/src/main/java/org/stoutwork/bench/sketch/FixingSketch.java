package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.quantity.Length;

/**
 * What a maker says of the screws that hold the top down.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class FixingSketch {

  Optional<Length> screwDiameter = Optional.empty();
  Optional<Length> threadLength = Optional.empty();
  Optional<Length> holeDiameter = Optional.empty();
  Optional<Length> slotWidth = Optional.empty();
  Optional<Length> slotLength = Optional.empty();
  Optional<TopHeld> heldAt = Optional.empty();
  Optional<FixingScrew> screw = Optional.empty();
  Optional<Length> pilotDiameter = Optional.empty();
  Optional<Length> washerDiameter = Optional.empty();
  Optional<Integer> perRail = Optional.empty();

  /** Sets the diameter of the shank. */
  public FixingSketch screwDiameter(Length value) {
    screwDiameter = Optional.of(value);
    return this;
  }

  /** Sets the length of thread in the top. */
  public FixingSketch threadLength(Length value) {
    threadLength = Optional.of(value);
    return this;
  }

  /** Sets the diameter of round holes in the rails; for slots use the two setters below. */
  public FixingSketch holeDiameter(Length value) {
    holeDiameter = Optional.of(value);
    return this;
  }

  /** Sets the width of slots, which lie along the rails. */
  public FixingSketch slotWidth(Length value) {
    slotWidth = Optional.of(value);
    return this;
  }

  /** Sets the length of slots over their round ends. */
  public FixingSketch slotLength(Length value) {
    slotLength = Optional.of(value);
    return this;
  }

  /** Sets which screw of each rail stands in a hole that fits it. */
  public FixingSketch heldAt(TopHeld value) {
    heldAt = Optional.of(value);
    return this;
  }

  /** Sets how many screws each top rail has. */
  public FixingSketch perRail(int value) {
    perRail = Optional.of(value);
    return this;
  }

  /** Sets the kind of screw. */
  public FixingSketch screw(FixingScrew value) {
    screw = Optional.of(value);
    return this;
  }

  /** Sets the diameter of the hole for the thread. */
  public FixingSketch pilotDiameter(Length value) {
    pilotDiameter = Optional.of(value);
    return this;
  }

  /** Sets the diameter of the washer, or of the head of a wood screw. */
  public FixingSketch washerDiameter(Length value) {
    washerDiameter = Optional.of(value);
    return this;
  }
}
