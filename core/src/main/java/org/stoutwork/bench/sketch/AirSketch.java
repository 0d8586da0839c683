package org.stoutwork.bench.sketch;

import java.util.Optional;

/**
 * What a maker says of the room in which the bench stands.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class AirSketch {

  Optional<String> climate = Optional.empty();
  Optional<Double> moistureAtAssembly = Optional.empty();
  Optional<Double> driest = Optional.empty();
  Optional<Double> wettest = Optional.empty();

  /** Sets the key of a preset climate. */
  public AirSketch climate(String value) {
    climate = Optional.of(value);
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
