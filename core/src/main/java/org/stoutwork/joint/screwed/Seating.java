package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.fastener.placing.GeometryFactor;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The rules that a fastener sits far enough from ends, edges and its neighbours. */
final class Seating {

  private static final Formula LOADED =
      Formula.define("a_min")
          .meaning("least distance, from unloaded towards loaded as the shear strength is used")
          .unit(Unit.MM)
          .where("a_c", "least distance, unloaded", Unit.MM)
          .where("a_t", "least distance, loaded", Unit.MM)
          .where("u_v", "part of the shear strength that is used, at most 1", Unit.ONE)
          .as("a_c + u_v*(a_t - a_c)")
          .source(
              Source.projectDefault(
                  "a straight line: the table asks for the loaded distance at full strength"));

  private final Limits limits;
  private final Fastening fastening;
  private final StrengthFamily family;
  private final double use;

  /**
   * @param use part of the shear strength that is used
   */
  Seating(Limits limits, Fastening fastening, StrengthFamily family, double use) {
    this.limits = limits;
    this.fastening = fastening;
    this.family = family;
    this.use = Math.min(1, use);
  }

  /** The distances of shear in one piece. */
  void shear(Seat seat, TimberStrength wood) {
    Distances least = least(seat, wood);
    loaded(seat, "the end", seat.end(), least.freeEnd(), least.end(), least.source());
    loaded(seat, "the edge", seat.edge(), least.freeEdge(), least.edge(), least.source());
    plain(seat, between("along"), seat.along(), least.alongGrain(), least.source());
    plain(seat, between("across"), seat.across(), least.acrossGrain(), least.source());
  }

  /** The distances of pull in the piece that holds the thread. */
  void pull(Seat seat) {
    double d = fastening.fastener().diameter();
    Distances least =
        family instanceof StrengthFamily.PartialFactors
            ? Distances.pulledScrew(d)
            : Distances.pulledScrewAllowable(d);
    String pulled = "pulled " + fastening.word();
    plain(
        seat,
        pulled + " from the end of the " + seat.piece(),
        seat.end(),
        least.end(),
        least.source());
    plain(
        seat,
        pulled + " from the edge of the " + seat.piece(),
        seat.edge(),
        least.edge(),
        least.source());
    plain(
        seat,
        "spacing of pulled " + fastening.word() + "s along the grain",
        seat.along(),
        least.alongGrain(),
        least.source());
    plain(
        seat,
        "spacing of pulled " + fastening.word() + "s across the grain",
        seat.across(),
        least.acrossGrain(),
        least.source());
  }

  /** What the NDS takes off the shear strength for a seat. */
  static double factor(Pad pad, Fastening fastening, Seat seat, TimberStrength wood) {
    double spacing = seat.degrees() > 45 ? seat.across() : seat.along();
    return GeometryFactor.of(
        pad, fastening.fastener().diameter(), seat.degrees(), wood.hardwood(), seat.end(), spacing);
  }

  private Distances least(Seat seat, TimberStrength wood) {
    double d = fastening.fastener().diameter();
    boolean drilled = fastening.drilled();
    return family instanceof StrengthFamily.PartialFactors
        ? Distances.screw(d, fastening.effectiveDiameter(), seat.degrees(), wood.density(), drilled)
        : Distances.allowable(d, seat.degrees(), wood.hardwood(), drilled, seat.slenderness());
  }

  private String between(String way) {
    return "spacing of " + fastening.word() + "s " + way + " the grain";
  }

  private void loaded(
      Seat seat, String what, double given, double free, double loaded, Source source) {
    String failure = "%s from %s of the %s".formatted(fastening.word(), what, seat.piece());
    if (Double.isInfinite(given)) {
      return;
    }
    if (free == loaded) {
      plain(seat, failure, given, free, source);
      return;
    }
    limits.least(
        failure,
        seat.piece(),
        Unit.MM,
        pad -> {
          pad.given("a_c", "least distance, unloaded", free, Unit.MM, source);
          pad.given("a_t", "least distance, loaded", loaded, Unit.MM, source);
          return pad.take(LOADED, free, loaded, use);
        },
        pad -> pad.given("a", "distance", given, Unit.MM, Source.derived("geometry")));
  }

  private void plain(Seat seat, String failure, double given, double least, Source source) {
    if (!Double.isInfinite(given)) {
      limits.rule(failure, seat.piece(), given, least, Unit.MM, source);
    }
  }
}
