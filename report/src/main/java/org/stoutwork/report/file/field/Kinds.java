package org.stoutwork.report.file.field;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.report.file.tree.Nearest;
import org.stoutwork.report.file.tree.ShortNumber;

/** The kinds of scalar that need no unit. */
public final class Kinds {

  private static final int MOST_WORDS_SHOWN = 16;

  private Kinds() {}

  /** Text of at least one sign. What looks like a number must stand in quotes. */
  public static Kind<String> text() {
    return new Kind<>("text", Kind.AS_TEXT, text -> refuseBlank(text), text -> text);
  }

  private static String refuseBlank(String text) throws NotUnderstood {
    if (text.isBlank()) {
      throw new NotUnderstood("at least one sign", "");
    }
    return text;
  }

  /** A number without unit. */
  public static Kind<Double> number(Range range) {
    Kind<Double> any = new Kind<>("a number", Kind.UNQUOTED, NumberText::read, ShortNumber::of);
    return range.equals(Range.ANY) ? any : narrowed("a number", any, range);
  }

  /** A whole number. */
  public static Kind<Integer> wholeNumber(int min, int max) {
    Kind<Long> any =
        new Kind<>("a whole number", Kind.UNQUOTED, NumberText::readWhole, String::valueOf);
    Kind<Long> narrow = narrowed("a whole number", any, Range.between(min, max));
    return new Kind<>(
        narrow.noun(),
        narrow.styles(),
        text -> Math.toIntExact(narrow.parser().parse(text)),
        String::valueOf);
  }

  private static <N extends Number> Kind<N> narrowed(String noun, Kind<N> any, Range range) {
    String narrower = noun + range.words();
    return new Kind<>(narrower, any.styles(), any.parser(), any.words())
        .where(value -> range.contains(value.doubleValue()), narrower);
  }

  /** Yes or no, written {@code yes}, {@code no}, {@code true} or {@code false}. */
  public static Kind<Boolean> yesNo() {
    return new Kind<>(
        "yes or no (or true, false)", Kind.UNQUOTED, Kinds::yesNo, yes -> yes ? "yes" : "no");
  }

  private static Boolean yesNo(String text) throws NotUnderstood {
    return switch (text) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw new NotUnderstood("", yesNoQuestion(text));
    };
  }

  private static String yesNoQuestion(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true", "y", "on", "1" -> "Did you mean yes?";
      case "no", "false", "n", "off", "0" -> "Did you mean no?";
      default -> "";
    };
  }

  /**
   * One of some words.
   *
   * @param words each word with its value, in the order in which messages list them
   */
  public static <T> Kind<T> choice(Map<String, T> words) {
    Map<String, T> copy = new LinkedHashMap<>(words);
    return Kind.of(
        oneOf(copy.keySet()),
        text -> pick(text, copy),
        value ->
            copy.entrySet().stream()
                .filter(e -> e.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(String.valueOf(value)));
  }

  /** One of an enum's constants, written in lower case with hyphens. */
  public static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
    }
    return choice(words);
  }

  /**
   * A name that is given elsewhere in the file.
   *
   * @param what what is named, with its article: {@code the name of a node}
   * @param names the names there are
   */
  public static Kind<String> reference(String what, Collection<String> names) {
    List<String> copy = List.copyOf(names);
    return new Kind<>(what, Kind.AS_TEXT, text -> known(text, copy), text -> text);
  }

  private static String known(String text, List<String> names) throws NotUnderstood {
    if (!names.contains(text)) {
      throw new NotUnderstood("", Nearest.question(Nearest.to(text, names)));
    }
    return text;
  }

  private static <T> T pick(String text, Map<String, T> words) throws NotUnderstood {
    T value = words.get(text);
    if (value == null) {
      Optional<String> nearest = Nearest.to(text, words.keySet());
      throw new NotUnderstood("", Nearest.question(nearest));
    }
    return value;
  }

  private static String oneOf(Collection<String> words) {
    if (words.size() > MOST_WORDS_SHOWN) {
      return "one of " + words.size() + " words";
    }
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    return last < 1
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }
}
