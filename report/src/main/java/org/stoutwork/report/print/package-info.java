/**
 * Prints the check sheet of a bench: what the sheet says, set on pages, as the bytes of a PDF file.
 * The one place where content, layout and type meet; nothing of them is known here but their front
 * doors.
 *
 * <p>Start at {@link org.stoutwork.report.print.BenchSheet}. Uses {@code sheet}, {@code
 * sheet.layout}, {@code sheet.bench} and {@code pdf}, and of the core {@code result}.
 */
package org.stoutwork.report.print;
