package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.model.Direction;

/** A single figure of interest that depends linearly on the loads. */
public sealed interface Response {
  /**
   * Displacement of a node.
   *
   * @param node its name
   * @param direction global
   */
  record Displacement(String node, Direction direction) implements Response {}

  /**
   * Force or moment by a support on the structure, two-way or one-way.
   *
   * @param node its name
   * @param direction global; the node must be held in it
   */
  record Reaction(String node, Direction direction) implements Response {}

  /**
   * Internal force of a member, loads just at the place not counted.
   *
   * @param member its name
   * @param at mm from the start of the flexible part
   * @param force which
   */
  record Internal(String member, double at, MemberResult.Force force) implements Response {}

  /**
   * Deflection of a member.
   *
   * @param member its name
   * @param at mm from the start of the flexible part
   * @param direction in the member's local axes
   */
  record Deflection(String member, double at, Direction direction) implements Response {}

  /**
   * A figure at one place of a panel.
   *
   * @param panel its name
   * @param x place along, mm
   * @param y place across, mm
   * @param quantity which figure
   */
  record OnPanel(String panel, double x, double y, PanelQuantity quantity) implements Response {}
}
