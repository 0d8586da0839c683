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
}
