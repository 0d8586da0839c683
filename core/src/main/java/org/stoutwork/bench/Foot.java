package org.stoutwork.bench;

import org.stoutwork.quantity.Length;

/**
 * A sled foot under both legs of an end frame; it stands on a pad at each end.
 *
 * @param wood name of the wood
 * @param thickness along the bench
 * @param depth up and down
 * @param length across the bench, overall, centred under the legs
 * @param pad length of the bearing pad at each end
 * @param joint of each leg into the foot
 */
public record Foot(
    String wood, Length thickness, Length depth, Length length, Length pad, BenchJoint joint) {}
