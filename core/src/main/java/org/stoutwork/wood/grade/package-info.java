/**
 * What growth takes away from clear wood: knots, checks and the slope of the grain, in the words a
 * joiner uses.
 *
 * <p>Start at {@link org.stoutwork.wood.grade.Growth}. Uses {@code wood}.
 */
package org.stoutwork.wood.grade;
