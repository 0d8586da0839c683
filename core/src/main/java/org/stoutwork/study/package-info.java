/**
 * The front door, and what depends on running all checks many times. {@link
 * org.stoutwork.study.BenchCheck} runs every check of a bench once. Uses everything below it.
 */
package org.stoutwork.study;
