/**
 * Formulas fitted by others to tests of furniture joints, and test series themselves, each with the
 * range it holds for; outside it no number is given.
 *
 * <p>Start at {@link org.stoutwork.joint.regression.DowelWithdrawal}. Nothing is judged by them:
 * they stand beside capacities for comparison. Uses {@code quantity}, {@code source} and {@code
 * working}.
 */
package org.stoutwork.joint.regression;
