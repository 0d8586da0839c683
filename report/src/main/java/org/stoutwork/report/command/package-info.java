/**
 * The command line: arguments in, exit codes out, and the only use of the console. It wires the
 * other rooms together and calculates nothing itself.
 */
package org.stoutwork.report.command;
