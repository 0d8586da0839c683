/**
 * The results of checking a bench as JSON for other programs. Start reading at {@link
 * org.stoutwork.report.file.result.ResultWriter}; {@code result.schema.json} beside this room says
 * what each key means and in which unit its number stands.
 *
 * <p>Nothing is calculated or rounded here.
 *
 * <p>Uses {@code file.tree} and {@code file.frame}, and of the core {@code quantity}, {@code
 * source}, {@code working}, {@code analysis.model}, {@code bench}, {@code action}, {@code result},
 * {@code check} and {@code study}.
 */
package org.stoutwork.report.file.result;
