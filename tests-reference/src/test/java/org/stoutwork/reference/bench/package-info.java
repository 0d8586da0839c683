/**
 * Whole benches and their end frames against statics done by hand. The sums stand in the comments;
 * the values of strength classes are those of EN 338:2016.
 */
package org.stoutwork.reference.bench;
