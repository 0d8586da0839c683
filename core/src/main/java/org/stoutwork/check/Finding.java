package org.stoutwork.check;

import java.util.Optional;
import org.stoutwork.quantity.Measure;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;
import org.stoutwork.result.Wording;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.RecordingPad;

/** Puts the outcome of a check together, step by step, and judges it. */
public final class Finding {

  private static final Source DEFINITION = Source.derived("definition of utilisation");

  private final String key;
  private final String title;
  private final Topic topic;
  private String part = "";
  private String place = "";
  private String load = "";
  private String combination = "";
  private String note = "";
  private Wording wording = Wording.USES;
  private Optional<StiffnessRange> range = Optional.empty();

  private Finding(String key, String title, Topic topic) {
    this.key = key;
    this.title = title;
    this.topic = topic;
  }

  /** Begins with what was looked at. */
  public static Finding of(String key, String title, Topic topic) {
    return new Finding(key, title, topic);
  }

  /** Names the part that governs and the place on it. */
  public Finding on(String governingPart, String where) {
    part = governingPart;
    place = where;
    return this;
  }

  /** Names the load that governs and the combination in which it stands. */
  public Finding under(String governingLoad, String inCombination) {
    load = governingLoad;
    combination = inCombination;
    return this;
  }

  /** Utilisation at low, mean and high stiffness of the joints. */
  public Finding over(StiffnessRange utilisations) {
    range = Optional.of(Utilisation.printable(utilisations));
    return this;
  }

  /** Says that the demand is the least that is asked for, and the capacity what is there. */
  public Finding needs() {
    wording = Wording.NEEDS;
    return this;
  }

  /** Something that a reader should know besides. */
  public Finding note(String words) {
    note = words;
    return this;
  }

  /** Judges demand against capacity; both in one unit. */
  public CheckResult.Checked judge(double demand, double capacity, Unit unit, RecordingPad pad) {
    double utilisation = Utilisation.printable(demand / capacity);
    if (Utilisation.unlimited(utilisation)) {
      pad.remark(Utilisation.NOTHING_CARRIES);
    } else {
      utilisation = pad.take(utilisation(unit), demand, capacity);
    }
    double printed = Utilisation.unlimited(utilisation) ? utilisation * capacity : demand;
    return finish(new Measure(printed, unit), new Measure(capacity, unit), utilisation, pad);
  }

  /** Judges a utilisation that is a sum of several; the limit of use is at most 1. */
  public CheckResult.Checked judgeSum(double sum, double limit, RecordingPad pad) {
    wording = Wording.SHARE;
    double printed = Utilisation.printable(sum);
    if (Utilisation.unlimited(printed)) {
      pad.remark(Utilisation.NOTHING_CARRIES);
    }
    double utilisation = limit == 1 ? printed : pad.take(utilisation(Unit.ONE), printed, limit);
    return finish(new Measure(printed, Unit.ONE), new Measure(limit, Unit.ONE), utilisation, pad);
  }

  private CheckResult.Checked finish(
      Measure demand, Measure capacity, double utilisation, RecordingPad pad) {
    double unfavourable =
        Utilisation.printable(
            range.map(r -> Math.max(r.largest(), utilisation)).orElse(utilisation));
    StiffnessRange whole =
        range.orElse(new StiffnessRange(unfavourable, unfavourable, unfavourable));
    Verdict verdict = range.map(Verdict::of).orElseGet(() -> Verdict.of(utilisation));
    return new CheckResult.Checked(
        key,
        title,
        part,
        topic,
        place,
        demand,
        capacity,
        wording,
        unfavourable,
        range,
        load,
        combination,
        verdict,
        Utilisation.noted(note, whole),
        pad.working());
  }

  private static Formula utilisation(Unit unit) {
    return Formula.define("u")
        .meaning("utilisation: demand over capacity")
        .where("E_d", "demand", unit)
        .where("R_d", "capacity", unit)
        .as("E_d/R_d")
        .source(DEFINITION);
  }
}
