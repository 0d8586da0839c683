package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.Optional;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.joint.ScrewSet;

/**
 * Where screws may stand in a half-lap: their distances to ends, edges and each other as the checks
 * ask for them, by both families of rules, since which of them will judge is not known yet. Screws
 * that carry are asked at their full strength; beside glue they only press.
 *
 * @param width of the lap along the rail, mm
 * @param depth of the rail, mm
 * @param beyond how far the post runs on from the nearer edge of the rail, mm
 * @param carry whether the screws carry
 * @param drilled whether a hole is drilled for them
 */
record LapScrews(double width, double depth, double beyond, boolean carry, boolean drilled) {

  /** Undrilled distances are those of heavy woods, kg/m³. */
  private static final double HEAVY = 700;

  /** Length in a piece over the diameter beyond which no distance grows. */
  private static final double SLENDER = 6;

  /** From the edge of the rail to the outermost screw where no rule asks for more; the usual. */
  private static final double PART = 0.2;

  /** How far from the edges of the rail the outermost may stand, mm; none if they do not fit. */
  Optional<Double> fromEdge(double d, int count) {
    double wanted = Math.ceil(Math.max(least(d), PART * depth));
    double most = Math.floor(depth - (count - 1) * spacing(d)) / 2;
    double taken = count == 1 ? depth / 2 : Math.min(wanted, most);
    return fits(d, count, taken) ? Optional.of(taken) : Optional.empty();
  }

  /** Whether so many screws so far from the edges of the rail keep all distances. */
  boolean fits(double d, int count, double fromEdge) {
    double inLap = (width - ScrewSet.stagger(width, count, d)) / 2;
    double next = count == 1 ? Double.POSITIVE_INFINITY : (depth - 2 * fromEdge) / (count - 1);
    return inLap >= Math.max(end(d), edge(d)) && fromEdge >= least(d) && next >= spacing(d);
  }

  private double least(double d) {
    return Math.max(edge(d), end(d) - Math.max(0, beyond));
  }

  private double end(double d) {
    double most = carry ? Distances.pulledScrew(d).end() : 0;
    for (Distances rule : rules(d, 0)) {
      most = Math.max(most, carry ? Math.max(rule.end(), rule.freeEnd()) : rule.freeEnd());
    }
    return most;
  }

  private double edge(double d) {
    double most = carry ? Distances.pulledScrew(d).edge() : 0;
    for (Distances rule : rules(d, 90)) {
      most = Math.max(most, carry ? Math.max(rule.edge(), rule.freeEdge()) : rule.freeEdge());
    }
    return most;
  }

  /** From one screw to the next: across the grain of the rail and along that of the post. */
  private double spacing(double d) {
    double most = carry ? Distances.pulledScrew(d).alongGrain() : 0;
    for (Distances rule : rules(d, 90)) {
      most = Math.max(most, rule.acrossGrain());
    }
    for (Distances rule : rules(d, 0)) {
      most = Math.max(most, rule.alongGrain());
    }
    return most;
  }

  /** The rules of nails and of bolts: the core of a screw, not yet known, decides between them. */
  private List<Distances> rules(double d, double degrees) {
    return List.of(
        Distances.screw(d, d, degrees, HEAVY, drilled),
        Distances.screw(d, 0, degrees, HEAVY, drilled),
        Distances.allowable(d, degrees, false, drilled, SLENDER));
  }
}
