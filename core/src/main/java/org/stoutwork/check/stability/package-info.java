/**
 * Checks of how the bench stands: tipping and sliding as a rigid body. Uses {@code check} and what
 * it uses.
 */
package org.stoutwork.check.stability;
