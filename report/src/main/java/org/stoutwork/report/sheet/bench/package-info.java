/**
 * The check sheet of a bench: what stands in each of its sections, and in what order.
 *
 * <p>Start at {@link org.stoutwork.report.sheet.bench.BenchSheet}, then read one section a file.
 * Nothing is calculated or judged here. Uses {@code sheet}, {@code drawing}, {@code figure}, {@code
 * units}, {@code pdf} for printing, and core {@code result}, {@code bench}, {@code action}, {@code
 * working}, {@code source} and {@code quantity}.
 */
package org.stoutwork.report.sheet.bench;
