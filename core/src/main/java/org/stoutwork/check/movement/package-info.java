/**
 * Checks of what water does to the bench: whether the top can move at its screws and under boards
 * across its ends. Start at {@link org.stoutwork.check.movement.TopMovement}. Knows no forces. Uses
 * {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time}, {@code
 * wood.moisture}, {@code wood.design}, {@code fastener}, {@code joint.glue}, {@code bench}, {@code
 * result} and {@code check}.
 */
package org.stoutwork.check.movement;
