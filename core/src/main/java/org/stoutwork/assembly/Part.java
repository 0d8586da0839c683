package org.stoutwork.assembly;

import java.util.List;

/**
 * A part of the bench and the members that stand for it.
 *
 * @param name as a maker would call it, such as "left front leg"
 * @param kind what it is
 * @param wood name of the wood
 * @param pieces in order from its start
 * @param mortises cut into it
 * @param length between the ends of the first and last piece, mm
 */
public record Part(
    String name,
    PartKind kind,
    String wood,
    List<Piece> pieces,
    List<Mortise> mortises,
    double length) {

  /** Keeps its own copies. */
  public Part {
    pieces = List.copyOf(pieces);
    mortises = List.copyOf(mortises);
  }
}
