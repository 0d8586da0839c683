/**
 * The frame file: nodes, members, panels, supports and loads of any structure, as JSON or YAML, and
 * the results of solving it as JSON. Start reading at {@link
 * org.stoutwork.report.file.frame.FrameFile} and {@link
 * org.stoutwork.report.file.frame.FrameFileReader}; {@code frame.schema.json} beside this room
 * describes the format for other programs.
 *
 * <p>Nothing of wood or benches may appear here.
 *
 * <p>Uses {@code file.tree} and {@code file.field}, and of the core {@code quantity}, {@code
 * analysis.model}, {@code analysis.element} and {@code analysis.solve}.
 */
package org.stoutwork.report.file.frame;
