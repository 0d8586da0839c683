/**
 * Frames, joints and stances of benches against figures worked out by hand, the numbers beside the
 * tests. Uses the core alone.
 */
package org.stoutwork.reference.benches;
