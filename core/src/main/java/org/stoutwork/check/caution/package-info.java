/**
 * Which cautions a sheet must carry, by what the checks found. Messages stand in one file, triggers
 * in another. Start at {@link org.stoutwork.check.caution.Cautions}. Nothing is calculated here.
 * Uses {@code quantity}, {@code source}, {@code working}, {@code joint}, {@code bench} and {@code
 * result}.
 */
package org.stoutwork.check.caution;
