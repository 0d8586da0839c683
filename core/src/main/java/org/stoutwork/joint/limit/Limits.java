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

  /** How a limit is read, and what its numbers are of where they have no unit. */
  private enum Kind {
    STRENGTH(JointLimit.Nature.STRENGTH, "of the strength"),
    SERVICE(JointLimit.Nature.SERVICE, "of the strength"),
    /** Of the rules without a unit, only the friction of wedges is a least one. */
    LEAST(JointLimit.Nature.RULE, "times what holds the wedge"),
    /** Of the rules without a unit, only the strain of a leaf is a most one. */
    MOST(JointLimit.Nature.RULE, "of the length");

    final JointLimit.Nature nature;
    final String of;

    Kind(JointLimit.Nature nature, String of) {
      this.nature = nature;
      this.of = of;
    }
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
    add(failure, place, unit, Kind.STRENGTH, demand, capacity);
  }

  /** A force beyond which the joint opens and softens, though nothing fails. */
  public void service(
      String failure, String place, double demand, Unit unit, ToDoubleFunction<Pad> capacity) {
    add(
        failure,
        place,
        unit,
        Kind.SERVICE,
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
        Kind.LEAST,
        pad -> pad.given("min", "least that is asked for", least, unit, source),
        pad -> pad.given("a", "value of this joint", value, unit, Source.derived("geometry")));
  }

  /** A rule whose quantities are calculated: the capacity must not be less than the demand. */
  public void least(
      String failure,
      String place,
      Unit unit,
      ToDoubleFunction<Pad> demand,
      ToDoubleFunction<Pad> capacity) {
    add(failure, place, unit, Kind.LEAST, demand, capacity);
  }

  /** A rule whose quantities are calculated: the demand must not be more than the capacity. */
  public void rule(
      String failure,
      String place,
      Unit unit,
      ToDoubleFunction<Pad> demand,
      ToDoubleFunction<Pad> capacity) {
    add(failure, place, unit, Kind.MOST, demand, capacity);
  }

  private void add(
      String failure,
      String place,
      Unit unit,
      Kind kind,
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
    String of = unit == Unit.ONE ? kind.of : "";
    limits.add(
        new JointLimit(failure, place, e, r, unit, kind.nature, kind == Kind.LEAST, of, working));
  }

  /** What was collected, in order. */
  public List<JointLimit> list() {
    return List.copyOf(limits);
  }
}
