package org.stoutwork.bench;

import java.util.Optional;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.StatedSpring;

/**
 * A joint of a bench.
 *
 * @param joint its kind and sizes
 * @param stated a stiffness that the maker states instead of the one that follows from the sizes
 */
public record BenchJoint(Joint joint, Optional<StatedSpring> stated) {}
