package org.stoutwork.bench.sketch;

import java.util.Optional;

/**
 * What a maker says of the people behind the sheet.
 *
 * <p>Anything left out is filled in by {@link BenchSketch#complete}. Not thread-safe: one maker,
 * one sketch.
 */
public final class PeopleSketch {

  Optional<String> prepared = Optional.empty();
  Optional<String> checked = Optional.empty();
  Optional<String> project = Optional.empty();
  Optional<String> revision = Optional.empty();
  Optional<String> date = Optional.empty();

  /** Sets who prepared the description. */
  public PeopleSketch prepared(String value) {
    prepared = Optional.of(value);
    return this;
  }

  /** Sets who will check it. */
  public PeopleSketch checked(String value) {
    checked = Optional.of(value);
    return this;
  }

  /** Sets what the bench belongs to. */
  public PeopleSketch project(String value) {
    project = Optional.of(value);
    return this;
  }

  /** Sets the letter or number of the revision. */
  public PeopleSketch revision(String value) {
    revision = Optional.of(value);
    return this;
  }

  /** Sets the date of issue. */
  public PeopleSketch date(String value) {
    date = Optional.of(value);
    return this;
  }
}
