package org.stoutwork.wood.design;

import java.util.Objects;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.wood.time.ServiceClass;

/**
 * Under what a wood must serve.
 *
 * @param duration of the load that decides
 * @param service how damp the air is; used by partial factors
 * @param moisture moisture content of the wood, %, above 0 and up to 30; used by clear-wood values
 * @param situation whether the combination is an accidental one; used by partial factors
 * @param growth knots and slope of grain; used by clear-wood values, since a strength class has its
 *     own limits
 */
public record DesignConditions(
    LoadDuration duration,
    ServiceClass service,
    double moisture,
    Situation situation,
    Growth growth) {

  /** Whether a combination holds an accident. */
  public enum Situation {
    USUAL,
    ACCIDENTAL
  }

  /**
   * @throws IllegalArgumentException if the moisture content is outside its range
   */
  public DesignConditions {
    Objects.requireNonNull(duration, "duration");
    Objects.requireNonNull(service, "service");
    Objects.requireNonNull(situation, "situation");
    Objects.requireNonNull(growth, "growth");
    if (!(moisture > 0 && moisture <= 30)) {
      throw new IllegalArgumentException(
          "the moisture content of the wood lies above 0 and up to 30 %%; it was %s"
              .formatted(moisture));
    }
  }

  /** Usual conditions indoors: service class 1, a usual combination. */
  public static DesignConditions indoors(DurationClass duration, double moisture, Growth growth) {
    return new DesignConditions(
        LoadDuration.of(duration), ServiceClass.CLASS_1, moisture, Situation.USUAL, growth);
  }

  /** The same under a load of another duration. */
  public DesignConditions under(LoadDuration other) {
    return new DesignConditions(other, service, moisture, situation, growth);
  }

  /** The same in another situation. */
  public DesignConditions in(Situation other) {
    return new DesignConditions(duration, service, moisture, other, growth);
  }
}
