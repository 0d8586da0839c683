package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.placing.PilotHoles;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** The rule that a drilled hole is neither too narrow nor too wide. */
final class Pilots {

  private static final Formula OFF =
      Formula.define("e")
          .meaning("how far the hole is off the middle of what is allowed")
          .unit(Unit.MM)
          .where("d_p", "hole drilled for it", Unit.MM)
          .where("d_min", "narrowest hole", Unit.MM)
          .where("d_max", "widest hole", Unit.MM)
          .as("max(d_p - (d_min + d_max)/2, (d_min + d_max)/2 - d_p)")
          .source(Source.derived("geometry"));

  private static final Formula HALF =
      Formula.define("e_max")
          .meaning("half of the range")
          .unit(Unit.MM)
          .where("d_min", "narrowest hole", Unit.MM)
          .where("d_max", "widest hole", Unit.MM)
          .as("(d_max - d_min)/2")
          .source(Source.derived("geometry"));

  private Pilots() {}

  /** Adds the rule; where no hole need be drilled, only a hole too wide is a fault. */
  static void rule(Limits limits, String place, PilotHoles holes, double d, double pilot) {
    double least = holes.least() * d;
    double most = holes.most() * d;
    if (least == 0) {
      limits.rule(
          "hole drilled for the " + place,
          place,
          Unit.MM,
          pad -> pad.given("d_p", "hole drilled for it", pilot, Unit.MM, Source.yours("hole")),
          pad -> pad.given("d_max", "widest hole", most, Unit.MM, holes.source()));
      return;
    }
    limits.rule(
        "hole drilled for the " + place,
        place,
        Unit.MM,
        pad -> off(pad, pilot, least, most, holes.source()),
        pad -> pad.take(HALF, least, most));
  }

  private static double off(Pad pad, double pilot, double least, double most, Source source) {
    pad.given("d_min", "narrowest hole", least, Unit.MM, source);
    pad.given("d_max", "widest hole", most, Unit.MM, source);
    return pad.take(OFF, pilot, least, most);
  }
}
