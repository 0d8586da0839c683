package org.stoutwork.fastener;

/** Anything that holds two pieces of wood together by passing through both. */
public sealed interface Fastener permits Peg, Bolt, Screw, Nail {

  /** Outer diameter of the shank or thread, mm. */
  double diameter();

  /** What the trade calls it, with its size. */
  String title();
}
