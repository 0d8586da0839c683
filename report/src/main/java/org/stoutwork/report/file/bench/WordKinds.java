package org.stoutwork.report.file.bench;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.NotUnderstood;
import org.stoutwork.report.file.tree.Nearest;

/** Words of the trade, read without regard to case, hyphens and blanks. */
final class WordKinds {

  private static final int SHORTEST_PART = 3;

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
    return Kind.of(
        "one of " + exact.noun(), text -> read(text, plain, exact, words.keySet()), exact.words());
  }

  private static <T> T read(
      String text, Map<String, T> plain, Kind<T> exact, Collection<String> words)
      throws NotUnderstood {
    T value = plain.get(plain(text));
    if (value != null) {
      return value;
    }
    try {
      return exact.parser().parse(text);
    } catch (NotUnderstood e) {
      throw e.suggestion().isEmpty() ? new NotUnderstood("", longer(text, words)) : e;
    }
  }

  /** Offers the only word that holds the text given, such as "rubber pads" for "rubber". */
  private static String longer(String text, Collection<String> words) {
    String part = plain(text);
    List<String> holding = words.stream().filter(word -> plain(word).contains(part)).toList();
    boolean clear = part.length() >= SHORTEST_PART && holding.size() == 1;
    return clear ? Nearest.question(Optional.of(holding.get(0))) : "";
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }
}
