/**
 * Formulas of the shouldered tenon and of wood pressed or cut at a joint: stiffness of glued and
 * dry tenons, glue line turning about the shoulder, tenon shear and bending at the root, bearing,
 * splitting, shear-out, wedges.
 *
 * <p>Plain numbers in, one number out, written on a pad. Start at {@link
 * org.stoutwork.joint.tenon.TenonSpring}. Knows no record of a joint. Uses {@code quantity}, {@code
 * source}, {@code working}, {@code section}, {@code fastener}, {@code joint.setting} and {@code
 * joint.glue}.
 */
package org.stoutwork.joint.tenon;
