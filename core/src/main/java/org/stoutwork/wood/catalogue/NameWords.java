package org.stoutwork.wood.catalogue;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The words of a name, made alike: lower case, no accents, no hyphens, singular, in alphabetical
 * order. So {@code Oaks, white}, {@code white-oak} and {@code White Oak} are the same words.
 */
final class NameWords {

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
  private static final Pattern SEPARATORS = Pattern.compile("[^a-z0-9.]+");

  private NameWords() {}

  static List<String> of(String name) {
    String bare = ACCENTS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll("");
    String plain = bare.toLowerCase(Locale.ROOT);
    List<String> words = new ArrayList<>();
    SEPARATORS
        .splitAsStream(plain)
        .filter(w -> !w.isEmpty())
        .map(NameWords::alike)
        .forEach(words::add);
    joinSplitWords(words);
    words.sort(null);
    return List.copyOf(words);
  }

  /** Spellings and plurals of the trade that mean one word. */
  private static String alike(String word) {
    String one = singular(word);
    return switch (one) {
      case "grey" -> "gray";
      case "ply" -> "plywood";
      default -> one;
    };
  }

  private static String singular(String word) {
    if (word.length() > 4 && word.endsWith("ies")) {
      return word.substring(0, word.length() - 3) + "y";
    }
    if (word.length() > 4 && (word.endsWith("ches") || word.endsWith("shes"))) {
      return word.substring(0, word.length() - 2);
    }
    boolean keepsS = word.endsWith("ss") || word.endsWith("us") || word.endsWith("is");
    boolean plural = word.length() > 3 && word.endsWith("s") && !keepsS;
    return plural ? word.substring(0, word.length() - 1) : word;
  }

  /** Compounds that are written in one word or in two. */
  private static void joinSplitWords(List<String> words) {
    joinPair(words, "tulip", "wood", "tulipwood");
    joinPair(words, "bass", "wood", "basswood");
    joinPair(words, "cotton", "wood", "cottonwood");
    joinPair(words, "rubber", "wood", "rubberwood");
    joinPair(words, "honey", "locust", "honeylocust");
    joinPair(words, "sweet", "gum", "sweetgum");
    joinPair(words, "block", "board", "blockboard");
    joinPair(words, "particle", "board", "particleboard");
    joinPair(words, "red", "cedar", "redcedar");
  }

  private static void joinPair(List<String> words, String first, String second, String joined) {
    int at = words.indexOf(first);
    if (at >= 0 && at + 1 < words.size() && words.get(at + 1).equals(second)) {
      words.set(at, joined);
      words.remove(at + 1);
    }
  }
}
