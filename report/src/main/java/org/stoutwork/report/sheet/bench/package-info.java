/**
 * The check sheet of a bench: what stands in each of its sections, and in what order.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.bench.SheetContent}, then read one section a file.
 * Nothing is calculated or judged here, and nothing is known of how blocks are set or printed.
 *
 * <p>Uses {@code drawing}, {@code units}, {@code figure}, {@code figure.joint} and {@code sheet},
 * and of the core {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code
 * wood.time}, {@code wood.moisture}, {@code fastener}, {@code joint}, {@code bench}, {@code action}
 * and {@code result}.
 */
package org.stoutwork.report.sheet.bench;
