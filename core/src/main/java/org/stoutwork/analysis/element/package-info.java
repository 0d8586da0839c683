/**
 * One file a kind of element: what a piece of structure does to the unknowns it touches. An {@link
 * org.stoutwork.analysis.element.Element} has a list of unknowns, a stiffness and a mass matrix in
 * global axes; any such thing can join the same system of equations.
 *
 * <p>Unknowns are numbered 6 × vertex + direction, in the order ux uy uz rx ry rz of global axes.
 * Uses {@code analysis.model} and {@code linear}. Start reading at {@link
 * org.stoutwork.analysis.element.Beam}.
 */
package org.stoutwork.analysis.element;
