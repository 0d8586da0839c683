package org.stoutwork.bench;

import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.quantity.Length;

/**
 * How the top is held down: screws up through the top rails. One of each rail may stand in a hole
 * that fits it; the others in round holes, or in slots along the rail, that let the top move.
 *
 * @param screwDiameter of the shank
 * @param threadLength of thread in the top
 * @param hole in the rail, for all screws but the one that holds the top
 * @param held which screw of each rail stands in a hole that fits it
 * @param screw kind of screw
 * @param pilotDiameter of the hole drilled for the thread
 * @param washerDiameter of the washer, or of the head of a wood screw
 * @param perRail screws in each top rail, at least 1
 */
public record TopFixing(
    Length screwDiameter,
    Length threadLength,
    ScrewHole hole,
    TopHeld held,
    FixingScrew screw,
    Length pilotDiameter,
    Length washerDiameter,
    int perRail) {

  /** With another hole and another screw that holds. */
  public TopFixing with(ScrewHole other, TopHeld holding) {
    return new TopFixing(
        screwDiameter, threadLength, other, holding, screw, pilotDiameter, washerDiameter, perRail);
  }

  /** Whether the screws have no play along the bench, across their slots. */
  public boolean fitsAlong() {
    return hole.width() <= screwDiameter.mm();
  }

  /** Whether the screws have no play across the bench, along their slots. */
  public boolean fitsAcross() {
    return hole.length() <= screwDiameter.mm();
  }

  /** How many screws of a rail have no play along the bench. */
  public int tightAlong() {
    return tight(fitsAlong());
  }

  /** How many screws of a rail have no play across the bench. */
  public int tightAcross() {
    return tight(fitsAcross());
  }

  private int tight(boolean all) {
    return all ? perRail : held == TopHeld.NOWHERE ? 0 : 1;
  }

  /**
   * How far the top may slide to either side on its rails before any screw bears, mm: 0 where one
   * of them has no play.
   */
  public double play() {
    double across = tightAcross() > 0 ? 0 : hole.length() - screwDiameter.mm();
    double along = tightAlong() > 0 ? 0 : hole.width() - screwDiameter.mm();
    return Math.max(across, along) / 2;
  }
}
