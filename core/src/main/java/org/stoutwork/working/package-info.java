/**
 * Traced calculation: a formula is written once as text, read into a tree, and that one tree both
 * yields the number and prints itself, in symbols and with the numbers put in.
 *
 * <p>Start at {@link org.stoutwork.working.Formula}; evaluate through a {@link
 * org.stoutwork.working.Pad}. A blank pad only calculates, so that sweeps pay nothing for
 * explanations nobody reads; a recording pad keeps the lines of a {@link
 * org.stoutwork.working.Working}. This room knows no wood and no structures. Uses {@code quantity}
 * and {@code source}.
 */
package org.stoutwork.working;
