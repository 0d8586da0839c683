/**
 * Checks of the joints: tenon shear, tenon bending, glue, pegs, bolts, bearing of rails on legs,
 * glue lines along pieces and in the top, the screws of the top and between its layers, nails of a
 * lipping, edges under the jaws of vises, and the rules of making. Start at {@link
 * org.stoutwork.check.joint.JointStrengthCheck}. No formula of a joint stands here; those are
 * below, in the rooms of {@code joint}.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time},
 * {@code wood.moisture}, {@code wood.design}, {@code analysis.model}, {@code analysis.solve},
 * {@code section}, {@code fastener}, {@code fastener.placing}, {@code joint}, {@code
 * joint.setting}, {@code joint.glue}, {@code joint.limit}, {@code joint.screwed}, {@code
 * joint.capacity}, {@code bench}, {@code action}, {@code result}, {@code assembly} and {@code
 * check}.
 */
package org.stoutwork.check.joint;
