/**
 * Fasteners pulled along their shank: thread out of wood, head through wood, washer into wood, and
 * the steel itself.
 *
 * <p>Start at {@link org.stoutwork.fastener.withdrawal.ScrewWithdrawal}. Uses {@code fastener},
 * {@code working}.
 */
package org.stoutwork.fastener.withdrawal;
