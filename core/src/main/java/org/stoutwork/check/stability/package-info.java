/**
 * Checks of how the bench stands: tipping and sliding as a rigid body. Start at {@link
 * org.stoutwork.check.stability.Standing}. Knows no joints and no strengths.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code analysis.model}, {@code
 * analysis.solve}, {@code bench}, {@code action}, {@code result}, {@code assembly} and {@code
 * check}.
 */
package org.stoutwork.check.stability;
