/**
 * Joints and fasteners against worked figures, solid models and published tests.
 *
 * <p>{@code joints/joints-worked.csv}: formula outputs of a separate script, two sets of inputs per
 * formula, with the document each formula comes from; rows with {@code published} in the name are
 * test results. {@code joints/joint-stiffness.csv}: linear-elastic solid models of tenon joints.
 * {@code joints/joint-series.csv}: means of test series, with the place each was read at, what was
 * assumed, and which rows are calibration or cannot be predicted.
 */
package org.stoutwork.reference.joints;
