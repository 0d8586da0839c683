/**
 * Cross-sections: rectangles, what a mortise, or several that meet, leave of one, layers glued,
 * screwed or loose on one another, and the constants of torsion and shear.
 *
 * <p>Takes moduli as numbers, so it knows no species. Sizes in mm, moduli in MPa. Start at {@link
 * org.stoutwork.section.Rectangle}. Uses no other room.
 */
package org.stoutwork.section;
