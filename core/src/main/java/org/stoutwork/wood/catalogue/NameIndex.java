package org.stoutwork.wood.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;

/**
 * Finds woods by name: by key, then by a whole name in any order of its words, then by some of the
 * words of the main name, then by some of the words of another name, then by spelling. Of several
 * answers, woods in wide use, which have trade names, come first.
 */
final class NameIndex {

  private static final int NEAREST_SHOWN = 5;

  /** One name of a wood, as words. */
  private record Entry(Wood wood, List<String> words, boolean main) {

    String spelled() {
      return String.join("", words);
    }
  }

  private final List<Entry> entries = new ArrayList<>();

  NameIndex(List<Wood> woods) {
    for (Wood wood : woods) {
      entries.add(new Entry(wood, NameWords.of(wood.key()), true));
      entries.add(new Entry(wood, NameWords.of(wood.name()), true));
      wood.names().forEach(name -> entries.add(new Entry(wood, NameWords.of(name), false)));
    }
  }

  Lookup find(String asked) {
    List<String> words = NameWords.of(asked);
    if (words.isEmpty()) {
      return new Lookup.Unknown(asked, List.of());
    }
    List<Predicate<Entry>> ways =
        List.of(
            e -> e.wood().key().equalsIgnoreCase(asked.strip()),
            e -> e.words().equals(words),
            e -> e.main() && e.words().containsAll(words),
            e -> e.words().containsAll(words));
    for (Predicate<Entry> way : ways) {
      List<Wood> answer = woods(entries.stream().filter(way));
      if (answer.size() == 1) {
        return new Lookup.Found(answer.get(0));
      }
      if (answer.size() > 1) {
        return new Lookup.Ambiguous(asked, answer);
      }
    }
    return new Lookup.Unknown(asked, nearest(words));
  }

  /** An entry and how far it is from what was asked, worked out once for sorting. */
  private record Near(Entry entry, int distance, int wordsApart) {}

  private List<Wood> nearest(List<String> words) {
    return entries.stream()
        .map(e -> new Near(e, distance(words, e), Math.abs(e.words().size() - words.size())))
        .sorted(Comparator.comparingInt(Near::distance).thenComparingInt(Near::wordsApart))
        .map(near -> near.entry().wood())
        .distinct()
        .limit(NEAREST_SHOWN)
        .toList();
  }

  /** Word by word, or run together, whichever is nearer. */
  private static int distance(List<String> asked, Entry entry) {
    int byWord = 0;
    for (String word : asked) {
      byWord += entry.words().stream().mapToInt(w -> Spelling.distance(word, w)).min().orElse(99);
    }
    return Math.min(byWord, Spelling.distance(String.join("", asked), entry.spelled()));
  }

  private static List<Wood> woods(Stream<Entry> found) {
    return found
        .map(Entry::wood)
        .distinct()
        .sorted(Comparator.comparing(NameIndex::isRare))
        .toList();
  }

  private static boolean isRare(Wood wood) {
    return wood instanceof Species species && species.otherNames().isEmpty();
  }
}
