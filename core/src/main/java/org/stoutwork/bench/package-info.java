/**
 * The bench as it will be built: parts, sizes, joints, woods, use and people, complete and checked
 * for what cannot be built. Records only; nothing is optional that matters, and nothing changes.
 *
 * <p>Start at {@link org.stoutwork.bench.Bench}; it is made from a maker's few words in {@code
 * bench.sketch}. {@link org.stoutwork.bench.Layout} says where each part stands. This room
 * calculates no forces. Uses {@code quantity}, {@code source}, {@code wood}, {@code wood.time},
 * {@code wood.moisture}, {@code wood.grade}, {@code fastener}, {@code joint} and {@code
 * joint.setting}.
 */
package org.stoutwork.bench;
