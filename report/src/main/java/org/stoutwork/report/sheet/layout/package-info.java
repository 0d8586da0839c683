/**
 * Sets blocks on pages. Every kind of block is set by a class of its own into bands, strips across
 * the column that are never split; the paginator puts bands on pages.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.layout.Layouter}, the only public type besides its
 * fault. Uses {@code drawing}, {@code sheet}, {@code sheet.page} and {@code sheet.math}, and of the
 * core {@code quantity}, {@code source} and {@code working}.
 */
package org.stoutwork.report.sheet.layout;
