/**
 * What a check hands outward: stable records of verdicts, demands, capacities, workings, diagrams
 * and cautions. Records only; nothing is calculated here, and no solver type passes through.
 *
 * <p>Start at {@link org.stoutwork.result.BenchResult}. Uses {@code quantity}, {@code source},
 * {@code working}, {@code bench} and {@code action}.
 */
package org.stoutwork.result;
