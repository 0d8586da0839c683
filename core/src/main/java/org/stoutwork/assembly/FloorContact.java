package org.stoutwork.assembly;

import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Footing;

/** How the feet stand on the floor in a model. */
public enum FloorContact {
  /** As they do: they press and may lift. */
  MAY_LIFT,
  /** Held both ways, so that the effects of single forces may be added up. */
  HELD;

  /** As the feet of a bench stand: fixings hold them down, nothing else does. */
  public static FloorContact of(Bench bench) {
    return bench.footing() == Footing.FIXED ? HELD : MAY_LIFT;
  }
}
