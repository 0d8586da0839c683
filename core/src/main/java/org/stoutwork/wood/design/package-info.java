/**
 * Design values of a wood under a basis, each with its working.
 *
 * <p>Start at {@link org.stoutwork.wood.design.DesignValues}. The two bases never mix: an allowable
 * stress from clear-wood means and a design strength from a class by partial factors are different
 * things, and a value that a basis cannot give is answered as missing, with the reason and what
 * there is instead. Means of stiffness and density belong to both. Uses {@code wood} and its other
 * rooms, and {@code working}.
 */
package org.stoutwork.wood.design;
