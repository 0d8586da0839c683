/**
 * Tables of facts, kept as comma separated text beside the code that uses them.
 *
 * <p>Knows how to read such a text strictly (a header of comments, one row of column names, rows
 * with as many cells) and how to say where a cell stands. Does not know what the columns mean. A
 * row that carries the columns {@code source} and {@code mark} hands out its citation.
 *
 * <p>Start at {@link org.stoutwork.table.Table}. Uses {@code source}.
 */
package org.stoutwork.table;
