package org.stoutwork.report.file.field;

/**
 * Reads one map of a file.
 *
 * @param <T> what it is turned into
 */
@FunctionalInterface
public interface Mapping<T> {

  /**
   * Asks for every key the map may have, then builds.
   *
   * @param fields the map
   * @return usually the outcome of {@link Fields#build}
   */
  Got<T> read(Fields fields);
}
