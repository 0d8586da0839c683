package org.stoutwork.report.file.bench;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.NotUnderstood;

/** Words of the trade, read without regard to case, hyphens and blanks. */
final class WordKinds {

  private WordKinds() {}

  /** One of an enum's constants by its words. */
  static <E extends Enum<E>> Kind<E> of(Class<E> type, Function<E, String> words) {
    Map<String, E> all = new LinkedHashMap<>();
    Arrays.stream(type.getEnumConstants()).forEach(one -> all.put(words.apply(one), one));
    return of(all);
  }

  /** One of some words; messages list them all and offer the nearest. */
  static <T> Kind<T> of(Map<String, T> words) {
    Kind<T> exact = Kinds.choice(words);
    Map<String, T> plain = new LinkedHashMap<>();
    words.forEach((word, value) -> plain.put(plain(word), value));
    return Kind.of("one of " + exact.noun(), text -> read(text, plain, exact), exact.words());
  }

  private static <T> T read(String text, Map<String, T> plain, Kind<T> exact) throws NotUnderstood {
    T value = plain.get(plain(text));
    return value == null ? exact.parser().parse(text) : value;
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }
}
