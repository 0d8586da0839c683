package org.stoutwork.analysis.model;

import java.util.Objects;

/**
 * A part of a panel with a section of its own, such as a strip of holes or a doubled apron.
 *
 * @param area where
 * @param section what it resists there
 */
public record PanelZone(PanelArea area, PanelSection section) {
  /** Checks that both are there. */
  public PanelZone {
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(section, "section");
  }
}
