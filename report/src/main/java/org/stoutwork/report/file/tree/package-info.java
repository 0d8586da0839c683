/**
 * Text in, tree out: YAML, and JSON as the part of YAML it is, become an immutable tree of {@link
 * org.stoutwork.report.file.tree.Node}s that know line, column and key path. Start reading at
 * {@link org.stoutwork.report.file.tree.TreeReader}.
 *
 * <p>Here live also the {@link org.stoutwork.report.file.tree.Fault}s a reading gathers, the search
 * for the nearest spelling, and the writer of canonical JSON ({@link
 * org.stoutwork.report.file.tree.JsonOut}). No key name of any particular file may appear here, and
 * no other room of this project is used. Uses no other room.
 */
package org.stoutwork.report.file.tree;
