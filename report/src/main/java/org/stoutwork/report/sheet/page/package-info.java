/**
 * Finished pages: marks at their places on paper, each belonging to an element of the sheet's
 * structure or to none (rules, running heads). This is what a back end prints.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.page.PagedSheet}. Uses {@code drawing} and {@code
 * sheet}.
 */
package org.stoutwork.report.sheet.page;
