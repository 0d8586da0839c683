/**
 * The bench file: what a maker writes of a bench in YAML or JSON, read strictly into a sketch and
 * completed to a bench. Every mistake, whether of writing or of building, comes back with its line.
 *
 * <p>Start at {@link org.stoutwork.report.file.bench.BenchFileReader}. One class for each part of
 * the file asks for its keys; what is missing is filled in by the core room {@code bench.sketch},
 * never here. Nothing is calculated here.
 *
 * <p>Uses {@code file.tree} and {@code file.field}, and of the core {@code quantity}, {@code wood},
 * {@code wood.time}, {@code wood.moisture}, {@code wood.grade}, {@code wood.catalogue}, {@code
 * fastener}, {@code joint.setting}, {@code bench} and {@code bench.sketch}.
 */
package org.stoutwork.report.file.bench;
