package org.stoutwork.result;

/**
 * A joint of the bench and its stiffness.
 *
 * @param name where it is
 * @param kind what the trade calls it
 * @param sizes in words
 * @param stiffness in the plane of its frame, N·mm/rad
 * @param reason for the range
 */
public record JointLine(
    String name, String kind, String sizes, StiffnessRange stiffness, String reason) {}
