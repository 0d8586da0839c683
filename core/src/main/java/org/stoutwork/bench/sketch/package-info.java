/**
 * What a maker says of a bench, as little or as much as matters, and how it is completed: the
 * default for everything left out, with its reason, and all faults of the description at once.
 *
 * <p>Start at {@link org.stoutwork.bench.sketch.BenchSketch}. A sketch may be changed while it is
 * being written and belongs to one maker; what {@code complete} yields is immutable. Uses {@code
 * bench} and the rooms below it.
 */
package org.stoutwork.bench.sketch;
