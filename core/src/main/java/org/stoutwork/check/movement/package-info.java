/**
 * Checks of what water does to the bench: whether the top can move at its screws. Uses {@code
 * check} and what it uses.
 */
package org.stoutwork.check.movement;
