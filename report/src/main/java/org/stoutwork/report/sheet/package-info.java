/**
 * What a sheet says: a flow of blocks with its page setup and its running heads. Only records; how
 * they are set is the business of {@code sheet.layout}, how they become a file that of {@code pdf}.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.Sheet} and {@link
 * org.stoutwork.report.sheet.Block}. Text is marked up as {@link
 * org.stoutwork.report.drawing.Markup} describes. Uses {@code drawing}, and of the core {@code
 * working} and {@code result}.
 */
package org.stoutwork.report.sheet;
