package org.stoutwork.assembly;

/** How the feet stand on the floor in a model. */
public enum FloorContact {
  /** As they do: they press and may lift. */
  MAY_LIFT,
  /** Held both ways, so that the effects of single forces may be added up. */
  HELD
}
