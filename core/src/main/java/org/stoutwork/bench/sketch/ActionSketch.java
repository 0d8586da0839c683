package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.quantity.Force;
import org.stoutwork.wood.time.CumulativeLoad;
import org.stoutwork.wood.time.DurationClass;

/**
 * What a maker says of an action that takes the place of the one that the duty sets.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class ActionSketch {

  Optional<ActionKind> kind = Optional.empty();
  Optional<String> name = Optional.empty();
  Optional<Force> force = Optional.empty();
  Optional<DurationClass> duration = Optional.empty();
  Optional<CumulativeLoad> acts = Optional.empty();

  /** Sets the kind of action. */
  public ActionSketch kind(ActionKind value) {
    kind = Optional.of(value);
    return this;
  }

  /** Sets the name. */
  public ActionSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets the force. */
  public ActionSketch force(Force value) {
    force = Optional.of(value);
    return this;
  }

  /** Sets how often it acts; its duration follows from the time that this makes in all. */
  public ActionSketch acts(CumulativeLoad value) {
    acts = Optional.of(value);
    return this;
  }

  /** Sets how long it lasts, all in all. */
  public ActionSketch duration(DurationClass value) {
    duration = Optional.of(value);
    return this;
  }
}
