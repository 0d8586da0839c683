package org.stoutwork.fastener;

/** A fastener that holds by its thread: it is screwed through one piece into another. */
public sealed interface Screw extends Fastener permits CoachScrew, WoodScrew {

  /** Diameter of the core under the thread, mm. */
  double root();

  /** Length, mm; of a coach screw under its head. */
  double length();

  /** Length of thread without the tip, mm. */
  double bite();

  /** Length of the tip, which holds nothing, mm. */
  double tip();

  /** Length of smooth shank under the head, mm. */
  double smooth();

  /** Diameter of what presses on the wood under the head: the head itself or its washer, mm. */
  double across();

  /** Bending yield strength of the steel, MPa. */
  double bendingYield();

  /** Tensile strength of the steel, MPa. */
  double ultimate();

  /** Least length in the second piece, in diameters, NDS 12.1.4 and 12.1.5, from memory. */
  double leastReach();
}
