/**
 * The command line: arguments in, exit codes out, and the only use of the console. It wires the
 * other rooms together and calculates nothing itself. Start at {@link
 * org.stoutwork.report.command.Stoutwork}.
 *
 * <p>Uses {@code units}, {@code sheet}, {@code sheet.bench}, {@code print}, {@code file.tree},
 * {@code file.field}, {@code file.frame}, {@code file.wood}, {@code file.bench} and {@code
 * file.result}, and of the core {@code quantity}, {@code source}, {@code wood}, {@code
 * wood.catalogue}, {@code analysis.model}, {@code analysis.element}, {@code analysis.solve}, {@code
 * bench}, {@code action}, {@code result}, {@code check} and {@code study}.
 */
package org.stoutwork.report.command;
