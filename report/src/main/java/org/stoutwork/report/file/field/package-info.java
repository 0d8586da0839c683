/**
 * Typed reading of a tree, with every mistake gathered and every default remembered. Start reading
 * at {@link org.stoutwork.report.file.field.FileReading}, then {@link
 * org.stoutwork.report.file.field.Fields}.
 *
 * <p>A file's mapping is a method that takes {@code Fields}, asks for its keys, and ends with
 * {@code fields.build(() -> new Leg(width.get(), depth.get()))}. Unknown keys are reported without
 * being asked for. No key name of any particular file may appear here. Uses {@code file.tree}, and
 * of the core {@code quantity}.
 */
package org.stoutwork.report.file.field;
