/**
 * Linear algebra on plain arrays: ordering, sparse factorisation, refinement and condition
 * estimates, small dense matrices, complementarity and eigenvalues.
 *
 * <p>Knows nothing of nodes, members or units. It is the only room that may import Commons Math.
 * Uses no other room. Start reading at {@link org.stoutwork.linear.LdlFactor}; low-rank changes are
 * {@link org.stoutwork.linear.SpringUpdate} and {@link org.stoutwork.linear.FlexibilityUpdate}.
 */
package org.stoutwork.linear;
