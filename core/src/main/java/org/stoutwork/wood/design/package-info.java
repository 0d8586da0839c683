/**
 * Design values of a wood under a basis, each with its working.
 *
 * <p>Start at {@link org.stoutwork.wood.design.DesignValues}. The two bases never mix: an allowable
 * stress from clear-wood means and a design strength from a class by partial factors are different
 * things, and a value that a basis cannot give is answered as missing, with the reason and what
 * there is instead. Means of stiffness and density belong to both.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code table}, {@code working}, {@code wood}, {@code
 * wood.time}, {@code wood.moisture}, {@code wood.direction}, {@code wood.grade}, {@code
 * wood.scatter}, {@code wood.surface} and {@code wood.catalogue}.
 */
package org.stoutwork.wood.design;
