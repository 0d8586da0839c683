package org.stoutwork.report.file.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The form of a key or word that ignores how it is written: {@code endFrame}, {@code end_frames}
 * and {@code End Frame} have the same form, as have {@code fibre} and {@code fiber}.
 *
 * @param letters the words joined, in lower case
 */
record WordForm(String letters) {

  private static final int LONGEST = 100;

  /** British to American, of words that may occur in descriptions of timber work. */
  private static final Map<String, String> AMERICAN =
      Map.ofEntries(
          Map.entry("vice", "vise"),
          Map.entry("fibre", "fiber"),
          Map.entry("centre", "center"),
          Map.entry("colour", "color"),
          Map.entry("metre", "meter"),
          Map.entry("millimetre", "millimeter"),
          Map.entry("mould", "mold"),
          Map.entry("moulding", "molding"),
          Map.entry("grey", "gray"),
          Map.entry("aluminium", "aluminum"),
          Map.entry("mortice", "mortise"),
          Map.entry("labelled", "labeled"),
          Map.entry("modelled", "modeled"),
          Map.entry("organisation", "organization"),
          Map.entry("normalised", "normalized"),
          Map.entry("plough", "plow"),
          Map.entry("gauge", "gage"));

  static WordForm of(String text) {
    return joined(text, words(text));
  }

  /** The same, but {@code legWidth} and {@code width of leg} have the same form, too. */
  static WordForm inAlphabeticalOrder(String text) {
    return joined(text, words(text).stream().sorted().toList());
  }

  private static WordForm joined(String text, List<String> words) {
    return new WordForm(words.isEmpty() ? text : String.join("", words));
  }

  private static List<String> words(String text) {
    if (text.length() > LONGEST) {
      return List.of();
    }
    List<String> words = new ArrayList<>();
    String spaced = text.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ");
    for (String word : spaced.split("[^\\p{L}\\p{N}]+", -1)) {
      String lower = singular(word.toLowerCase(Locale.ROOT));
      if (!lower.isEmpty() && !lower.equals("of") && !lower.equals("the")) {
        words.add(AMERICAN.getOrDefault(lower, lower));
      }
    }
    return words;
  }

  private static String singular(String word) {
    return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
        ? word.substring(0, word.length() - 1)
        : word;
  }
}
