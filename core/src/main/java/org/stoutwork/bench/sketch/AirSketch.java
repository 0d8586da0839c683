package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.wood.time.ServiceClass;

/**
 * What a maker says of the room in which the bench stands.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class AirSketch {

  Optional<String> climate = Optional.empty();
  Optional<Double> lowHumidity = Optional.empty();
  Optional<Double> highHumidity = Optional.empty();
  Optional<Double> celsius = Optional.empty();
  Optional<ServiceClass> serviceClass = Optional.empty();
  Optional<Double> moistureAtAssembly = Optional.empty();
  Optional<Double> driest = Optional.empty();
  Optional<Double> wettest = Optional.empty();

  /** Sets the key of a preset climate. */
  public AirSketch climate(String value) {
    climate = Optional.of(value);
    return this;
  }

  /** Sets the lowest relative humidity that lasts for weeks, per cent, in place of the preset's. */
  public AirSketch lowHumidity(double value) {
    lowHumidity = Optional.of(value);
    return this;
  }

  /** Sets the highest relative humidity that lasts for weeks, per cent. */
  public AirSketch highHumidity(double value) {
    highHumidity = Optional.of(value);
    return this;
  }

  /** Sets the usual temperature, degrees Celsius. */
  public AirSketch celsius(double value) {
    celsius = Optional.of(value);
    return this;
  }

  /** Sets the service class, where it is known otherwise than from the air. */
  public AirSketch serviceClass(ServiceClass value) {
    serviceClass = Optional.of(value);
    return this;
  }

  /** Sets the moisture content of the wood when the bench is put together, per cent. */
  public AirSketch moistureAtAssembly(double value) {
    moistureAtAssembly = Optional.of(value);
    return this;
  }

  /** Sets the lowest moisture content it will have, per cent. */
  public AirSketch driest(double value) {
    driest = Optional.of(value);
    return this;
  }

  /** Sets the highest moisture content it will have, per cent. */
  public AirSketch wettest(double value) {
    wettest = Optional.of(value);
    return this;
  }
}
