/**
 * Formulas of the shouldered tenon and of wood pressed or cut at a joint: stiffness of glued and
 * dry tenons, glue line turning about the shoulder, tenon shear and bending at the root, bearing,
 * splitting, shear-out, wedges.
 *
 * <p>Plain numbers in, one number out, written on a pad. Start at {@link
 * org.stoutwork.joint.tenon.TenonSpring}. Uses {@code joint.setting}, {@code working}.
 */
package org.stoutwork.joint.tenon;
