package org.stoutwork.joint.limit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;
import org.stoutwork.working.Working;

/** Collects the limits of one joint; each is calculated on a pad of its own. */
public final class Limits {

  private static final Source HERE = Source.derived("definition of utilisation");
  private static final Source FORCE = Source.derived("analysis: force on the joint");

  private static final Formula OF_FORCE = utilisation(Unit.N);
  private static final Formula OF_MOMENT = utilisation(Unit.N_MM);
  private static final Formula OF_STRESS = utilisation(Unit.MPA);
  private static final Formula OF_LENGTH = utilisation(Unit.MM);
  private static final Formula OF_RATIO = utilisation(Unit.ONE);

  private final boolean keep;
  private final List<JointLimit> limits = new ArrayList<>();

  /** Begins a list; workings are kept or not. */
  public Limits(boolean keep) {
    this.keep = keep;
  }

  private static Formula utilisation(Unit unit) {
    return Formula.define("u")
        .meaning("utilisation")
        .where("E_d", "demand", unit)
        .where("R_d", "capacity", unit)
        .as("E_d/R_d")
        .source(HERE);
  }

  private static Formula formulaFor(Unit unit) {
    return switch (unit) {
      case N -> OF_FORCE;
      case N_MM -> OF_MOMENT;
      case MPA -> OF_STRESS;
      case MM -> OF_LENGTH;
      default -> OF_RATIO;
    };
  }

  /** A strength with a demand that needs no calculation of its own. */
  public void strength(
      String failure, String place, double demand, Unit unit, ToDoubleFunction<Pad> capacity) {
    strength(
        failure,
        place,
        unit,
        pad -> pad.given("E_d", "demand", Math.abs(demand), unit, FORCE),
        capacity);
  }

  /** A strength whose demand is calculated too. */
  public void strength(
      String failure,
      String place,
      Unit unit,
      ToDoubleFunction<Pad> demand,
      ToDoubleFunction<Pad> capacity) {
    add(failure, place, unit, JointLimit.Nature.STRENGTH, demand, capacity);
  }

  /** A force beyond which the joint opens and softens, though nothing fails. */
  public void service(
      String failure, String place, double demand, Unit unit, ToDoubleFunction<Pad> capacity) {
    add(
        failure,
        place,
        unit,
        JointLimit.Nature.SERVICE,
        pad -> pad.given("E_d", "demand", Math.abs(demand), unit, FORCE),
        capacity);
  }

  /** A rule of making: the value must not be less than the least. */
  public void rule(
      String failure, String place, double value, double least, Unit unit, Source source) {
    add(
        failure,
        place,
        unit,
        JointLimit.Nature.RULE,
        pad -> pad.given("min", "least that is asked for", least, unit, source),
        pad -> pad.given("a", "value of this joint", value, unit, Source.derived("geometry")));
  }

  /** A rule whose quantities are calculated. */
  public void rule(
      String failure,
      String place,
      Unit unit,
      ToDoubleFunction<Pad> demand,
      ToDoubleFunction<Pad> capacity) {
    add(failure, place, unit, JointLimit.Nature.RULE, demand, capacity);
  }

  private void add(
      String failure,
      String place,
      Unit unit,
      JointLimit.Nature nature,
      ToDoubleFunction<Pad> demand,
      ToDoubleFunction<Pad> capacity) {
    RecordingPad kept = keep ? Pad.recording() : null;
    Pad pad = keep ? kept : Pad.blank();
    double e = demand.applyAsDouble(pad);
    double r = capacity.applyAsDouble(pad);
    if (e > 0) {
      pad.take(formulaFor(unit), e, r);
    }
    Working working = keep ? kept.working() : Working.NONE;
    limits.add(new JointLimit(failure, place, e, r, unit, nature, working));
  }

  /** What was collected, in order. */
  public List<JointLimit> list() {
    return List.copyOf(limits);
  }
}
