package org.stoutwork.report.file.field;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A key of a map that has been asked for. It is read by the one of {@link #required}, {@link
 * #optional} and {@link #orDefault} that follows.
 *
 * @param <T> what is read
 */
public final class Field<T> {

  private final Fields owner;
  private final String key;
  private final String noun;
  private final Function<Value, Got<T>> reader;
  private final Function<T, String> words;

  Field(
      Fields owner,
      String key,
      String noun,
      Function<Value, Got<T>> reader,
      Function<T, String> words) {
    this.owner = owner;
    this.key = key;
    this.noun = noun;
    this.reader = reader;
    this.words = words;
  }

  /**
   * Adds a condition.
   *
   * @param test what the value must fulfil
   * @param needed what is needed then, with its article: {@code an even number}
   * @return the stricter field
   */
  public Field<T> where(Predicate<? super T> test, String needed) {
    Function<Value, Got<T>> checked =
        value -> {
          Got<T> got = reader.apply(value);
          boolean wrong = got.isThere() && !test.test(got.get());
          return wrong ? value.fault(needed + " is needed", "") : got;
        };
    return new Field<>(owner, key, needed, checked, words);
  }

  /**
   * The same field, whose default is put into words otherwise.
   *
   * @param inWords turns a value into words
   */
  public Field<T> described(Function<T, String> inWords) {
    return new Field<>(owner, key, noun, reader, inWords);
  }

  /** Reads the value; its absence is a mistake. */
  public Got<T> required() {
    Optional<Value> value = owner.find(key);
    if (value.isEmpty()) {
      owner.noteMissing(key, noun + " is needed");
      return Got.nothing();
    }
    return reader.apply(value.get());
  }

  /** Reads the value if there is one. */
  public Got<Optional<T>> optional() {
    Optional<Value> value = owner.find(key);
    return value.isEmpty() ? Got.of(Optional.empty()) : reader.apply(value.get()).map(Optional::of);
  }

  /**
   * Reads the value or takes a default, which is remembered.
   *
   * @param value the default
   * @param why why this value, as a clause
   */
  public Got<T> orDefault(T value, String why) {
    return orDefault(Got.of(value), why);
  }

  /**
   * Reads the value or takes what another key gave, which is remembered as a default.
   *
   * @param other what another key gave
   * @param why why this value, as a clause
   */
  public Got<T> orDefault(Got<T> other, String why) {
    Optional<Value> value = owner.find(key);
    if (value.isPresent()) {
      return reader.apply(value.get());
    }
    other.ifThere(taken -> owner.noteDefault(key, words.apply(taken), why));
    return other;
  }
}
