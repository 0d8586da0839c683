package org.stoutwork.analysis.solve;

/**
 * How a one-way support or contact ended.
 *
 * @param part the node or tie it belongs to
 * @param touching false when it stands open
 * @param force what it pushes with, N; 0 when open
 * @param gap how far it is open, mm; 0 when touching
 */
public record ContactState(String part, boolean touching, double force, double gap) {}
