package org.stoutwork.report.file.field;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A value read from a file, or nothing because the mistake in its place has been noted. Ask for it
 * inside {@link Fields#build}, which gives up quietly when any value is missing.
 *
 * @param <T> what was read
 */
public final class Got<T> {

  /** Thrown by {@link #get} where the mistake has been noted already; {@code build} catches it. */
  static final class NotThere extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotThere() {
      super("the mistake has been noted", null, false, false);
    }
  }

  private final T value;

  private Got(T value) {
    this.value = value;
  }

  /** A value. */
  public static <T> Got<T> of(T value) {
    return new Got<>(Objects.requireNonNull(value));
  }

  /** No value; the mistake has been noted. */
  public static <T> Got<T> nothing() {
    return new Got<>(null);
  }

  /** Whether there is a value. */
  public boolean isThere() {
    return value != null;
  }

  /** The value; to be called inside {@link Fields#build}, or where {@link #isThere()}. */
  public T get() {
    if (value == null) {
      throw new NotThere();
    }
    return value;
  }

  /** The value, or another where there is none: to go on and find further mistakes. */
  public T orElse(T other) {
    return value == null ? other : value;
  }

  /** Turns the value, if any, into another; the function must not fail. */
  public <R> Got<R> map(Function<? super T, ? extends R> turn) {
    return value == null ? nothing() : of(turn.apply(value));
  }

  /** Hands the value, if any, on. */
  public void ifThere(Consumer<? super T> use) {
    if (value != null) {
      use.accept(value);
    }
  }
}
