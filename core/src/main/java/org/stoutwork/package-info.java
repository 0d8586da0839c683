/**
 * Root of the calculation library. Nothing lives here: every type belongs to one of the rooms below
 * it, and each room's own {@code package-info} says what it knows and what it may use.
 *
 * <p>Two towers stand side by side: the mechanics tower ({@code linear}, {@code analysis}) knows
 * nodes, members and springs but no wood; the wood tower ({@code wood}, {@code section}, {@code
 * fastener}, {@code joint}) knows timber but no solver. They meet first in {@code assembly}.
 */
package org.stoutwork;
