/**
 * Turns pages into the bytes of a PDF file, and knows how wide type is. The only room that imports
 * OpenPDF.
 *
 * <p>Start at {@link org.stoutwork.report.pdf.PdfPress}. Nothing here reads a clock, a locale or a
 * file outside the program: same pages, same bytes. Uses {@code drawing}, {@code sheet}, {@code
 * sheet.page} and {@code sheet.layout}.
 */
package org.stoutwork.report.pdf;
