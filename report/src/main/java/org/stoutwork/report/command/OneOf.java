package org.stoutwork.report.command;

import java.util.Map;
import java.util.TreeSet;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads one of a few words of the command line. */
abstract class OneOf<T> implements ITypeConverter<T> {

  private final Map<String, T> words;

  OneOf(Map<String, T> words) {
    this.words = words;
  }

  @Override
  public T convert(String word) {
    if (!words.containsKey(word)) {
      throw new TypeConversionException(
          "'" + word + "' is none of " + String.join(", ", new TreeSet<>(words.keySet())));
    }
    return words.get(word);
  }
}
