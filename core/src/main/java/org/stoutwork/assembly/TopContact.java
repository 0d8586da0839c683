package org.stoutwork.assembly;

/** How a plated top rests on what carries it. */
public enum TopContact {
  /** As it does: it presses on rails and stretchers, may part from them, and screws hold it. */
  MAY_PART,
  /** Held both ways, so that the effects of single forces may be added up. */
  HELD
}
