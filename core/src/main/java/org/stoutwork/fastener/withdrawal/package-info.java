/**
 * Fasteners pulled along their shank: thread out of wood, head through wood, washer into wood, and
 * the steel itself.
 *
 * <p>Start at {@link org.stoutwork.fastener.withdrawal.ScrewWithdrawal}. Knows no joints. Uses
 * {@code quantity}, {@code source}, {@code working} and {@code fastener}.
 */
package org.stoutwork.fastener.withdrawal;
