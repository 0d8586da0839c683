package org.stoutwork.analysis.model;

import java.util.Objects;
import java.util.Optional;

/**
 * How the ground holds a panel along a line.
 *
 * @param line where
 * @param w along the normal: rigid, a spring per unit of length (N/mm per mm), or one-way, which
 *     lets the panel rise along its normal; empty leaves it free
 * @param slopeAlong true when the rotation that follows the line is held: the section rotation in
 *     the vertical plane through the line (a hard simple support holds it)
 * @param slopeAcross true when the rotation at right angles to the line is held (a clamp holds
 *     both, a line of symmetry holds this one only)
 */
public record PanelSupport(
    PanelLine line, Optional<Link> w, boolean slopeAlong, boolean slopeAcross) {
  /** Checks that something is held. */
  public PanelSupport {
    Objects.requireNonNull(line, "line");
    if (w.isEmpty() && !slopeAlong && !slopeAcross) {
      throw new IllegalArgumentException(
          "the support on " + line.inWords() + " holds nothing; hold w or a slope");
    }
  }

  /** w = 0, both rotations free: a knife edge, the soft simple support. */
  public static PanelSupport knifeEdge(PanelLine line) {
    return new PanelSupport(line, Optional.of(Link.RIGID), false, false);
  }

  /** w = 0 and no rotation along the line. */
  public static PanelSupport hard(PanelLine line) {
    return new PanelSupport(line, Optional.of(Link.RIGID), true, false);
  }

  /** Nothing moves. */
  public static PanelSupport clamped(PanelLine line) {
    return new PanelSupport(line, Optional.of(Link.RIGID), true, true);
  }

  /** Carries by pressing only; the panel may lift. */
  public static PanelSupport pressing(PanelLine line) {
    return new PanelSupport(line, Optional.of(Link.CONTACT), false, false);
  }

  /** A spring along the line, N/mm per mm of its length. */
  public static PanelSupport elastic(PanelLine line, double stiffness) {
    return new PanelSupport(line, Optional.of(Link.elastic(stiffness)), false, false);
  }
}
