package org.stoutwork.wood.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.stoutwork.wood.Wood;

/**
 * Finds woods by name: first by a whole name in any order of its words, then by some of the words
 * of a name, then by spelling.
 */
final class NameIndex {

  private static final int NEAREST_SHOWN = 5;

  /** One name of a wood, as words and as a text for spelling. */
  private record Entry(Wood wood, List<String> words, String spelled) {}

  private final List<Entry> entries = new ArrayList<>();

  NameIndex(List<Wood> woods) {
    for (Wood wood : woods) {
      Stream.concat(Stream.of(wood.key()), wood.names().stream())
          .map(NameWords::of)
          .forEach(words -> entries.add(new Entry(wood, words, String.join(" ", words))));
    }
  }

  Lookup find(String asked) {
    List<String> words = NameWords.of(asked);
    if (words.isEmpty()) {
      return new Lookup.Unknown(asked, List.of());
    }
    List<Wood> byKey =
        distinct(entries.stream().filter(e -> e.wood().key().equalsIgnoreCase(asked.strip())));
    List<Wood> whole = distinct(entries.stream().filter(e -> e.words().equals(words)));
    List<Wood> part = distinct(entries.stream().filter(e -> e.words().containsAll(words)));
    for (List<Wood> answer : List.of(byKey, whole, part)) {
      if (answer.size() == 1) {
        return new Lookup.Found(answer.get(0));
      }
      if (answer.size() > 1) {
        return new Lookup.Ambiguous(asked, answer);
      }
    }
    return new Lookup.Unknown(asked, nearest(String.join(" ", words)));
  }

  private List<Wood> nearest(String spelled) {
    return entries.stream()
        .sorted(Comparator.comparingInt(e -> Spelling.distance(spelled, e.spelled())))
        .map(Entry::wood)
        .distinct()
        .limit(NEAREST_SHOWN)
        .toList();
  }

  private static List<Wood> distinct(Stream<Entry> found) {
    return found.map(Entry::wood).distinct().toList();
  }
}
