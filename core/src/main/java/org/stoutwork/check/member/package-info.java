/**
 * Checks of the members: bending with axial force and buckling, shear, in every leg, rail, foot,
 * stretcher and strip of the top, net of mortises. Uses {@code check} and what it uses.
 */
package org.stoutwork.check.member;
