/**
 * Units and typed quantities: what a length, a force or a stress is, how a person writes one
 * ({@code 70 mm}, {@code 2 3/4 in}, {@code 1.2 kN/m}) and how it is written back.
 *
 * <p>The set of units is closed on purpose. Inside the calculation values travel as plain doubles
 * in N, mm, MPa, rad, kg and s; the types of this room stand at the boundary. Knows no wood and no
 * formula. Start reading at {@link org.stoutwork.quantity.Unit}. Uses no other room.
 */
package org.stoutwork.quantity;
