/**
 * What growth takes away from clear wood: knots, checks and the slope of the grain, in the words a
 * joiner uses.
 *
 * <p>Start at {@link org.stoutwork.wood.grade.Growth}. Knows no grading rules of the trade in
 * timber and no members. Uses {@code quantity}, {@code source}, {@code table}, {@code working} and
 * {@code wood}.
 */
package org.stoutwork.wood.grade;
