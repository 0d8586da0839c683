package org.stoutwork.bench;

import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * A stretcher along the bench, or a spine under the top where it touches it; in a bench with more
 * than two end frames there is one in each bay.
 *
 * @param name in words, such as "lower front stretcher"
 * @param line which line it follows
 * @param wood name of the wood
 * @param thickness across the bench
 * @param depth up and down
 * @param centreAt height of its middle above the floor
 * @param extension of its ends, if any
 * @param hold how it is held to the top, where it touches its underside
 * @param joint at each end
 */
public record Stretcher(
    String name,
    StretcherLine line,
    String wood,
    Length thickness,
    Length depth,
    Length centreAt,
    Optional<EndExtension> extension,
    LayerHold hold,
    BenchJoint joint) {

  /** Depth at the joint: that of the extension where there is one, mm. */
  public double endDepthMm() {
    return extension.map(e -> e.depth().mm()).orElse(depth.mm());
  }

  /** Height of the middle of its ends above the floor, mm: moved by a piece on one edge. */
  public double endCentreMm() {
    double half = (endDepthMm() - depth.mm()) / 2;
    return extension
        .map(e -> centreAt.mm() + (e.edge() == GluedEdge.BELOW ? -half : half))
        .orElse(centreAt.mm());
  }

  /** Height of its lower edge above the floor, that of a piece glued on below included, mm. */
  public double lowestMm() {
    return Math.min(centreAt.mm() - depth.mm() / 2, endCentreMm() - endDepthMm() / 2);
  }

  /** Height of its upper edge above the floor, that of a piece glued on above included, mm. */
  public double highestMm() {
    return Math.max(centreAt.mm() + depth.mm() / 2, endCentreMm() + endDepthMm() / 2);
  }
}
