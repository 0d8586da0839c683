/**
 * What is to be solved, as immutable records: nodes, members, supports, ties, masses and loads of a
 * structure of beams in space. No wood, no benches, no arithmetic beyond checks.
 *
 * <p>Units are N, mm, MPa, rad; masses kg and densities kg/m³. Global axes are right-handed with z
 * up; rotations are right-handed and small. Start reading at {@link
 * org.stoutwork.analysis.model.FrameModel}. Uses no other room.
 */
package org.stoutwork.analysis.model;
