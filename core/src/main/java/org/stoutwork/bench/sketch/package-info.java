/**
 * What a maker says of a bench, as little or as much as matters, and how it is completed: the
 * default for everything left out, with its reason, and all faults of the description at once.
 *
 * <p>Start at {@link org.stoutwork.bench.sketch.BenchSketch}. A sketch may be changed while it is
 * being written and belongs to one maker; what {@code complete} yields is immutable. No forces are
 * known here.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time},
 * {@code wood.moisture}, {@code wood.grade}, {@code wood.catalogue}, {@code section}, {@code
 * fastener}, {@code fastener.placing}, {@code joint}, {@code joint.setting}, {@code joint.tenon},
 * {@code joint.advice} and {@code bench}.
 */
package org.stoutwork.bench.sketch;
