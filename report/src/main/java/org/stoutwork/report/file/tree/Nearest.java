package org.stoutwork.report.file.tree;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the word somebody probably meant. First words that differ only in case, hyphens, plural or
 * between British and American spelling; then words a few slips of the finger away.
 */
public final class Nearest {

  private Nearest() {}

  /**
   * Finds the nearest of some words.
   *
   * @param given what was written
   * @param words what would have been right, in order of preference
   * @return the nearest word, or empty when none is near
   */
  public static Optional<String> to(String given, Collection<String> words) {
    Optional<String> same = sameInOtherSpelling(given, words);
    if (same.isPresent()) {
      return same;
    }
    Optional<String> slipped = withFewSlips(given, words);
    return slipped.isPresent() ? slipped : inOtherOrder(given, words);
  }

  /**
   * Finds a word that is the same but for its spelling.
   *
   * @param given what was written
   * @param words what would have been right
   * @return the first such word, or empty
   */
  public static Optional<String> sameInOtherSpelling(String given, Collection<String> words) {
    WordForm form = WordForm.of(given);
    return words.stream().filter(word -> WordForm.of(word).equals(form)).findFirst();
  }

  private static Optional<String> inOtherOrder(String given, Collection<String> words) {
    WordForm form = WordForm.inAlphabeticalOrder(given);
    return words.stream()
        .filter(word -> WordForm.inAlphabeticalOrder(word).equals(form))
        .findFirst();
  }

  private static Optional<String> withFewSlips(String given, Collection<String> words) {
    String lower = given.toLowerCase(Locale.ROOT);
    String best = null;
    int fewest = Integer.MAX_VALUE;
    for (String word : words) {
      int allowed = slipsAllowed(Math.min(given.length(), word.length()));
      if (Math.abs(given.length() - word.length()) > allowed) {
        continue;
      }
      int slips = Slips.between(lower, word.toLowerCase(Locale.ROOT));
      if (slips <= allowed && slips < fewest) {
        fewest = slips;
        best = word;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int slipsAllowed(int length) {
    if (length <= 2) {
      return length - 1;
    }
    return length <= 5 ? 1 : length <= 8 ? 2 : 3;
  }

  /**
   * The sentence that offers a word.
   *
   * @param word the word, if one was found
   * @return {@code Did you mean "word"?}, or nothing
   */
  public static String question(Optional<String> word) {
    return word.map(w -> "Did you mean " + Quote.of(w) + "?").orElse("");
  }
}
