/**
 * Checks of the joints: tenon shear, tenon bending, glue, pegs, bolts, bearing of rails on legs,
 * and the rules of making. Uses {@code check} and what it uses.
 */
package org.stoutwork.check.joint;
