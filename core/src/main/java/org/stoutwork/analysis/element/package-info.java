/**
 * One file a kind of element: what a piece of structure does to the unknowns it touches. An {@link
 * org.stoutwork.analysis.element.Element} has a list of unknowns, a stiffness and a mass matrix in
 * global axes; any such thing can join the same system of equations.
 *
 * <p>Unknowns are numbered 6 × vertex + direction, in the order ux uy uz rx ry rz of global axes.
 * Start reading at {@link org.stoutwork.analysis.element.Beam}. Knows no loads of a bench and no
 * way of solving. Uses {@code linear} and {@code analysis.model}.
 */
package org.stoutwork.analysis.element;
