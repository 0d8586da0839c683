package org.stoutwork.report.file.tree;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Writes canonical JSON: keys in the order in which they are put, one entry a line, lists of
 * scalars on one line, the shortest decimals that read back as the same number, a newline at the
 * end. The same content gives the same bytes on every machine.
 *
 * <p>{@code JsonOut.object(o -> o.put("schemaVersion", 1).put("title", "rack"))}
 */
public final class JsonOut {

  private final StringBuilder out;
  private final String indent;
  private final Set<String> keys = new HashSet<>();

  private JsonOut(StringBuilder out, String indent) {
    this.out = out;
    this.indent = indent;
  }

  /**
   * Writes a document that is one object.
   *
   * @param content puts the entries
   * @return the text, ending in a newline
   */
  public static String object(Consumer<JsonOut> content) {
    StringBuilder out = new StringBuilder();
    nested(out, "", content);
    return out.append('\n').toString();
  }

  /** Puts a text. */
  public JsonOut put(String key, String value) {
    key(key);
    text(out, value);
    return this;
  }

  /**
   * Puts a number.
   *
   * @throws IllegalArgumentException when the value is not finite
   */
  public JsonOut put(String key, double value) {
    String number = number(key, value);
    key(key).append(number);
    return this;
  }

  /** Puts a whole number. */
  public JsonOut put(String key, long value) {
    key(key).append(value);
    return this;
  }

  /** Puts true or false. */
  public JsonOut put(String key, boolean value) {
    key(key).append(value);
    return this;
  }

  /** Puts the absence of a value, where a reader must see that it was thought of. */
  public JsonOut putNull(String key) {
    key(key).append("null");
    return this;
  }

  /** Puts an object. */
  public JsonOut object(String key, Consumer<JsonOut> content) {
    key(key);
    nested(out, indent + "  ", content);
    return this;
  }

  /**
   * Puts a list of numbers on one line.
   *
   * @throws IllegalArgumentException when a value is not finite
   */
  public JsonOut numbers(String key, double... values) {
    String line = list(key, values);
    key(key).append(line);
    return this;
  }

  /**
   * Puts a list of lists of numbers on one line.
   *
   * @throws IllegalArgumentException when a value is not finite
   */
  public JsonOut numberLists(String key, Collection<double[]> lists) {
    String line = String.join(", ", lists.stream().map(list -> list(key, list)).toList());
    key(key).append('[').append(line).append(']');
    return this;
  }

  private static String list(String key, double... values) {
    return Arrays.stream(values)
        .mapToObj(value -> number(key, value))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** Puts a list of texts on one line. */
  public JsonOut texts(String key, Collection<String> values) {
    key(key).append('[');
    String separator = "";
    for (String value : values) {
      out.append(separator);
      text(out, value);
      separator = ", ";
    }
    out.append(']');
    return this;
  }

  /** Puts a list of objects, one for each item. */
  public <T> JsonOut objects(String key, Collection<T> items, BiConsumer<JsonOut, T> content) {
    key(key).append('[');
    String separator = "";
    for (T item : items) {
      out.append(separator).append('\n').append(indent).append("    ");
      nested(out, indent + "    ", o -> content.accept(o, item));
      separator = ",";
    }
    out.append(items.isEmpty() ? "]" : "\n" + indent + "  ]");
    return this;
  }

  private static void nested(StringBuilder out, String indent, Consumer<JsonOut> content) {
    out.append('{');
    JsonOut inner = new JsonOut(out, indent);
    content.accept(inner);
    out.append(inner.keys.isEmpty() ? "}" : "\n" + indent + "}");
  }

  private StringBuilder key(String key) {
    if (!keys.add(key)) {
      throw new IllegalArgumentException("the key " + Quote.of(key) + " was put twice");
    }
    out.append(keys.size() == 1 ? "\n" : ",\n").append(indent).append("  ");
    text(out, key);
    return out.append(": ");
  }

  private static void text(StringBuilder out, String value) {
    out.append('"').append(JsonStringEncoder.getInstance().quoteAsString(value)).append('"');
  }

  private static String number(String key, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "the value of " + Quote.of(key) + " is " + value + "; JSON holds finite numbers only");
    }
    return ShortNumber.of(value);
  }
}
