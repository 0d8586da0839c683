package org.stoutwork.report.file.field;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.stoutwork.report.file.tree.ScalarNode.Style;

/**
 * A kind of scalar: how it is read, what it is called in messages, and how a default of it is put
 * into words.
 *
 * @param noun what is needed, with its article and perhaps an example: {@code a number above 0}
 * @param styles the styles of scalar that are read
 * @param parser turns text into the value
 * @param words turns the value into words
 * @param <T> the value
 */
public record Kind<T>(
    String noun, Set<Style> styles, ScalarParser<T> parser, Function<T, String> words) {

  /** Every style in which something can be written. */
  public static final Set<Style> ANY_STYLE =
      Set.copyOf(EnumSet.of(Style.WORD, Style.NUMBER, Style.TRUTH, Style.QUOTED));

  /** Words, in quotes or not. */
  public static final Set<Style> AS_TEXT = Set.copyOf(EnumSet.of(Style.WORD, Style.QUOTED));

  /** Anything without quotes. */
  public static final Set<Style> UNQUOTED =
      Set.copyOf(EnumSet.of(Style.WORD, Style.NUMBER, Style.TRUTH));

  /** Copies the set. */
  public Kind {
    styles = Set.copyOf(styles);
  }

  /**
   * A kind that is read whether in quotes or not.
   *
   * @param noun what is needed, with its article
   * @param parser turns text into the value
   * @param words turns the value into words
   * @return the kind
   */
  public static <T> Kind<T> of(String noun, ScalarParser<T> parser, Function<T, String> words) {
    return new Kind<>(noun, ANY_STYLE, parser, words);
  }

  /**
   * The same kind, called otherwise in messages.
   *
   * @param otherNoun what is needed, with its article
   * @return the kind
   */
  public Kind<T> named(String otherNoun) {
    return new Kind<>(otherNoun, styles, parser, words);
  }

  /**
   * The same kind with a narrower range.
   *
   * @param test what a value must fulfil
   * @param narrower what is needed then, with its article
   * @return the narrower kind
   */
  public Kind<T> where(Predicate<? super T> test, String narrower) {
    ScalarParser<T> checked =
        text -> {
          T value = parser.parse(text);
          if (!test.test(value)) {
            throw new NotUnderstood("", "");
          }
          return value;
        };
    return new Kind<>(narrower, styles, checked, words);
  }
}
