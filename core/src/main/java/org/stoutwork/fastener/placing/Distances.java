package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.source.Source;

/**
 * Least distances of a fastener, mm.
 *
 * @param end from a loaded end
 * @param freeEnd from an unloaded end
 * @param edge from a loaded edge
 * @param freeEdge from an unloaded edge
 * @param alongGrain between fasteners along the grain
 * @param acrossGrain between fasteners across the grain
 * @param source of the rule
 */
public record Distances(
    double end,
    double freeEnd,
    double edge,
    double freeEdge,
    double alongGrain,
    double acrossGrain,
    Source source) {

  private static final Source PEGS =
      Source.fromMemory(
          "Schmidt and Daniels, Design Considerations for Mortise and Tenon Connections (1999)",
          "end and edge distances of 1 in pegs");

  /** Above it screws sit as bolts do, EN 1995-1-1 8.7.1, mm. */
  public static final double SLENDER = 6;

  /** Below it nails and screws have no tabled distances in the NDS, 1/4 in, mm. */
  public static final double QUARTER_INCH = 6.35;

  private static final double STOUT_NAIL = 5;
  private static final double LIGHT_WOOD = 420;

  /** EN 1995-1-1 Table 8.5, dowels and pegs of dowel kind; angle between force and grain. */
  public static Distances dowel(double d, double degrees) {
    double a = Math.toRadians(degrees);
    double end = Math.max(7 * d, 80);
    return new Distances(
        end,
        Math.max(end * Math.sin(a), 3 * d),
        loadedEdge(d, a),
        3 * d,
        (3 + 2 * Math.abs(Math.cos(a))) * d,
        3 * d,
        Documents.ec5("Table 8.5"));
  }

  /** EN 1995-1-1 Table 8.4, bolts; angle between force and grain. */
  public static Distances bolt(double d, double degrees) {
    double a = Math.toRadians(degrees);
    return new Distances(
        Math.max(7 * d, 80),
        Math.max((1 + 6 * Math.sin(a)) * d, 4 * d),
        loadedEdge(d, a),
        3 * d,
        (4 + Math.abs(Math.cos(a))) * d,
        4 * d,
        Documents.ec5("Table 8.4"));
  }

  private static double loadedEdge(double d, double radians) {
    return Math.max((2 + 2 * Math.sin(radians)) * d, 3 * d);
  }

  /**
   * EN 1995-1-1 Table 8.2, nails.
   *
   * @param degrees between force and grain, 0 to 90
   * @param density characteristic, kg/m³; counts for holes that are not drilled
   * @param drilled whether a hole is drilled for the nail
   */
  public static Distances nail(double d, double degrees, double density, boolean drilled) {
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    boolean stout = d >= STOUT_NAIL;
    if (drilled) {
      return new Distances(
          (7 + 5 * cos) * d,
          7 * d,
          (3 + (stout ? 4 : 2) * sin) * d,
          3 * d,
          (4 + cos) * d,
          (3 + sin) * d,
          Documents.ec5("Table 8.2, drilled"));
    }
    if (density <= LIGHT_WOOD) {
      return new Distances(
          (10 + 5 * cos) * d,
          10 * d,
          (5 + (stout ? 5 : 2) * sin) * d,
          5 * d,
          (5 + (stout ? 7 : 5) * cos) * d,
          5 * d,
          Documents.ec5("Table 8.2, not drilled, up to 420 kg/m³"));
    }
    return new Distances(
        (15 + 5 * cos) * d,
        15 * d,
        (7 + (stout ? 5 : 2) * sin) * d,
        7 * d,
        (7 + 8 * cos) * d,
        7 * d,
        Documents.ec5("Table 8.2, not drilled, above 420 kg/m³"));
  }

  /**
   * EN 1995-1-1 8.7.1, screws across their shank: as nails up to 6 mm, as bolts above.
   *
   * @param d diameter, mm
   * @param effective diameter of the shank or 1.1 times the core, by which the rule is chosen, mm
   */
  public static Distances screw(
      double d, double effective, double degrees, double density, boolean drilled) {
    return effective > SLENDER ? bolt(d, degrees) : nail(d, degrees, density, drilled);
  }

  /** EN 1995-1-1 Table 8.6, screws pulled along their shank; editions differ. */
  public static Distances pulledScrew(double d) {
    return new Distances(
        10 * d,
        10 * d,
        4 * d,
        4 * d,
        7 * d,
        5 * d,
        Documents.ec5("Table 8.6 (A1), given for timber of at least 12 d"));
  }

  /** NDS, coach screws pulled along their shank; wood screws are taken alike. */
  public static Distances pulledScrewAllowable(double d) {
    return new Distances(
        4 * d, 4 * d, 1.5 * d, 1.5 * d, 4 * d, 4 * d, Documents.nds("Table 12.5.1E"));
  }

  /**
   * NDS, fasteners across their shank. Below 1/4 in the distances that its commentary advises,
   * above them those with which the full strength is kept but for {@link GeometryFactor}.
   *
   * @param degrees between force and grain; above 45° the force counts as across the grain
   * @param hardwood whether the piece is a hardwood
   * @param drilled whether a hole is drilled
   * @param slenderness length in the piece over the diameter
   */
  public static Distances allowable(
      double d, double degrees, boolean hardwood, boolean drilled, double slenderness) {
    boolean along = degrees <= 45;
    if (d < QUARTER_INCH) {
      return advised(d, along, drilled);
    }
    if (along) {
      return new Distances(
          (hardwood ? 2.5 : 3.5) * d,
          2 * d,
          1.5 * d,
          1.5 * d,
          3 * d,
          1.5 * d,
          Documents.nds("Tables 12.5.1A to D, along the grain"));
    }
    double rows = Math.min(5, Math.max(2.5, (5 * slenderness + 10) / 8));
    return new Distances(
        2 * d,
        2 * d,
        4 * d,
        1.5 * d,
        rows * d,
        3 * d,
        Documents.nds("Tables 12.5.1A to D, across the grain"));
  }

  private static Distances advised(double d, boolean along, boolean drilled) {
    double rows = (drilled ? 3 : 5) * d;
    double row = (drilled ? 10 : 15) * d;
    return new Distances(
        row,
        (drilled ? 5 : 10) * d,
        2.5 * d,
        2.5 * d,
        along ? row : rows,
        along ? rows : (drilled ? 5 : 10) * d,
        Documents.nds("commentary, Table C12.1.6.6"));
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
    return new Distances(end * d, end * d, edge * d, edge * d, spacing * d, spacing * d, PEGS);
  }
}
