package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.source.Source;

/**
 * Least distances of a fastener, mm.
 *
 * @param end from a loaded end
 * @param edge from a loaded edge
 * @param freeEdge from an unloaded edge
 * @param alongGrain between fasteners along the grain
 * @param acrossGrain between fasteners across the grain
 * @param source of the rule
 */
public record Distances(
    double end,
    double edge,
    double freeEdge,
    double alongGrain,
    double acrossGrain,
    Source source) {

  private static final Source PEGS =
      Source.fromMemory(
          "Schmidt and Daniels, Design Considerations for Mortise and Tenon Connections (1999)",
          "end and edge distances of 1 in pegs");

  /** EN 1995-1-1 Table 8.5, dowels and pegs of dowel kind; angle between force and grain. */
  public static Distances dowel(double d, double degrees) {
    double a = Math.toRadians(degrees);
    double edge = Math.max((2 + 2 * Math.sin(a)) * d, 3 * d);
    return new Distances(
        Math.max(7 * d, 80),
        edge,
        3 * d,
        (3 + 2 * Math.abs(Math.cos(a))) * d,
        3 * d,
        Documents.ec5("Table 8.5"));
  }

  /** EN 1995-1-1 Table 8.4, bolts. */
  public static Distances bolt(double d, double degrees) {
    double a = Math.toRadians(degrees);
    double edge = Math.max((2 + 2 * Math.sin(a)) * d, 3 * d);
    return new Distances(
        Math.max(7 * d, 80),
        edge,
        3 * d,
        (4 + Math.abs(Math.cos(a))) * d,
        4 * d,
        Documents.ec5("Table 8.4"));
  }

  /** EN 1995-1-1 Table 8.6, screws pulled along their shank; editions differ. */
  public static Distances pulledScrew(double d) {
    return new Distances(10 * d, 4 * d, 4 * d, 7 * d, 5 * d, Documents.ec5("Table 8.6 (A1)"));
  }

  /**
   * Wood pegs in joints that were tested with pegs of about 25 mm.
   *
   * @param gravity of the timber
   * @param hardwood whether it is a hardwood
   */
  public static Distances peg(double d, double gravity, boolean hardwood) {
    if (hardwood && gravity >= 0.5) {
      return pegs(d, 3, 2, 2.5);
    }
    if (hardwood) {
      return pegs(d, 2.5, 2.5, 3);
    }
    return gravity >= 0.45 ? pegs(d, 2, 2.5, 2.5) : pegs(d, 4, 4, 3);
  }

  private static Distances pegs(double d, double end, double edge, double spacing) {
    return new Distances(end * d, edge * d, edge * d, spacing * d, spacing * d, PEGS);
  }
}
