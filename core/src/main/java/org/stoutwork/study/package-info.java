/**
 * The front door, and what depends on running all checks many times. {@link
 * org.stoutwork.study.BenchCheck} runs every check of a bench once. No formula stands here, and
 * nothing is printed.
 *
 * <p>Uses {@code quantity}, {@code source}, {@code working}, {@code wood}, {@code wood.time},
 * {@code wood.catalogue}, {@code wood.design}, {@code analysis.model}, {@code analysis.solve},
 * {@code fastener}, {@code joint}, {@code joint.stiffness}, {@code joint.advice}, {@code bench},
 * {@code bench.sketch}, {@code action}, {@code result}, {@code assembly}, {@code check}, {@code
 * check.member}, {@code check.joint}, {@code check.service}, {@code check.stability}, {@code
 * check.movement} and {@code check.caution}.
 */
package org.stoutwork.study;
