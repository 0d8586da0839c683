package org.stoutwork.bench.sketch;

import org.stoutwork.joint.Joint;

/**
 * Where a joint is to be made.
 *
 * @param key in the description
 * @param railDepth depth of the piece that ends here, in the plane of bending, mm
 * @param railThickness its other side, mm
 * @param postDepth depth of the piece it meets, behind the shoulder, mm
 * @param postThickness its other side, mm
 * @param beyond how far the piece it meets runs on from the nearer edge of the piece that ends
 *     here, mm; unlimited where it runs on both ways
 * @param facing whether a piece of another bay comes to the same place from the other side
 * @param wood of the piece that ends here
 * @param usual the joint that is taken if none is named
 */
record JointPlace(
    String key,
    double railDepth,
    double railThickness,
    double postDepth,
    double postThickness,
    double beyond,
    boolean facing,
    WoodNames.Kind wood,
    Usual usual) {

  /** The joints taken where none is named. */
  enum Usual {
    GLUED,
    BOLTED
  }

  Joint.Members members() {
    return new Joint.Members(railDepth, railThickness, postDepth, postThickness);
  }
}
