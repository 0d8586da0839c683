/**
 * Checks of what water does to the bench: whether the top can move at its screws. Start at {@link
 * org.stoutwork.check.movement.TopMovement}. Knows no forces. Uses {@code quantity}, {@code
 * source}, {@code working}, {@code wood}, {@code wood.moisture}, {@code bench}, {@code result} and
 * {@code check}.
 */
package org.stoutwork.check.movement;
