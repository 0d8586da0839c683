/**
 * The results of checking a bench as JSON for other programs. Start reading at {@link
 * org.stoutwork.report.file.result.ResultWriter}; {@code result.schema.json} beside this room says
 * what each key means and in which unit its number stands.
 *
 * <p>Nothing is calculated or rounded here. Uses {@code file.tree} and the core rooms {@code
 * result}, {@code working}, {@code source}, {@code bench} and {@code quantity}.
 */
package org.stoutwork.report.file.result;
