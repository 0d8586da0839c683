/**
 * Checks of the members: bending with axial force, buckling and lateral buckling, shear, in every
 * leg, rail, foot, stretcher and strip of the top, net of mortises; and of the top as dogs press in
 * its holes. Start at {@link org.stoutwork.check.member.MemberStrength}. Joints are not looked at
 * here.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time},
 * {@code wood.design}, {@code section}, {@code analysis.model}, {@code analysis.solve}, {@code
 * bench}, {@code action}, {@code result}, {@code assembly} and {@code check}.
 */
package org.stoutwork.check.member;
