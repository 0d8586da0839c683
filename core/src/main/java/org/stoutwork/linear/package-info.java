/**
 * Linear algebra on plain arrays: ordering, sparse factorisation, refinement and condition
 * estimates, small dense matrices, complementarity and eigenvalues.
 *
 * <p>Knows nothing of nodes, members or units. It is the only room that may import Commons Math.
 * Start reading at {@link org.stoutwork.linear.LdlFactor}. Uses no other room.
 */
package org.stoutwork.linear;
