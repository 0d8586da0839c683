/**
 * Which cautions a sheet must carry, by what the checks found. Messages stand in one file, triggers
 * in another. Uses {@code result}, {@code bench} and {@code action}.
 */
package org.stoutwork.check.caution;
