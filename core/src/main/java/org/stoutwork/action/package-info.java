/**
 * What acts on a bench, what may stand together, and what a duty asks of it: forces, their places,
 * how long they last, combinations with their factors, and the limits of use.
 *
 * <p>Start at {@link org.stoutwork.action.ActionPlan}. Nothing is analysed or judged here. Every
 * figure that a duty sets is a project default until the maker states another; the mark goes with
 * it. Uses {@code quantity}, {@code source}, {@code wood.time} and {@code bench}.
 */
package org.stoutwork.action;
