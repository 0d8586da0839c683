package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.Fastener;
import org.stoutwork.joint.setting.TimberStrength;

/** One screw or nail through a piece on the head's side into a piece on the point's side. */
public sealed interface Fastening permits Screwing, Nailing {

  /** The screw or nail. */
  Fastener fastener();

  /** What the trade calls it, without sizes. */
  String word();

  /** Thickness of the piece under the head, mm. */
  double headThickness();

  /** Strengths of the piece under the head. */
  TimberStrength head();

  /** Strengths of the piece that the point sits in. */
  TimberStrength point();

  /** Angle between shear and grain of the piece under the head, degrees. */
  double headAngle();

  /** Angle between shear and grain of the other piece, degrees. */
  double pointAngle();

  /** Whether the point sits in end grain. */
  boolean endGrain();

  /** Length in the piece that the point sits in, mm. */
  double reach();

  /** Length of the tapered tip, mm. */
  double tip();

  /**
   * Diameter with which it bears and bends, and by which the rules of nails or those of bolts are
   * chosen, EN 1995-1-1 8.7.1, mm.
   */
  double effectiveDiameter();

  /** Whether a hole is drilled for it. */
  boolean drilled();
}
