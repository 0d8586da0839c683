package org.stoutwork.report.file.field;

/**
 * Turns the text of a scalar into a value.
 *
 * @param <T> the value
 */
@FunctionalInterface
public interface ScalarParser<T> {

  /**
   * Reads a text.
   *
   * @param text as it stands in the file, without quotes
   * @return the value, never null
   * @throws NotUnderstood when the text is something else
   */
  T parse(String text) throws NotUnderstood;
}
