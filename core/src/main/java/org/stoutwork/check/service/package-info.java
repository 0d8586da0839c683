/**
 * Checks of use: whether the top sags or springs too much, and how far the bench racks. Start at
 * {@link org.stoutwork.check.service.TopSag}. Nothing is said here of strength.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code analysis.model}, {@code
 * analysis.solve}, {@code joint.stiffness}, {@code bench}, {@code action}, {@code result}, {@code
 * assembly} and {@code check}.
 */
package org.stoutwork.check.service;
