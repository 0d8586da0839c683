/**
 * Measures speed against libraries on the same systems in the same run. Not part of any jar and not
 * run by the tests. Start reading at {@link org.stoutwork.benchmark.AnalysisRatios}.
 */
package org.stoutwork.benchmark;
