package org.stoutwork.report.file.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.KeyPath;
import org.stoutwork.report.file.tree.ListNode;
import org.stoutwork.report.file.tree.MapNode;
import org.stoutwork.report.file.tree.Node;
import org.stoutwork.report.file.tree.ScalarNode;
import org.stoutwork.report.file.tree.ScalarNode.Style;
import org.stoutwork.report.file.tree.Spot;

/** One value of a file that may still be of any kind. */
public final class Value {

  private final Reading reading;
  private final Fields owner;
  private final Node node;

  Value(Reading reading, Fields owner, Node node) {
    this.reading = reading;
    this.owner = owner;
    this.node = node;
  }

  /** Where it begins. */
  public Spot spot() {
    return node.spot();
  }

  /** Where it stands. */
  public KeyPath path() {
    return node.path();
  }

  /** Whether it is a map of keys. */
  public boolean isMap() {
    return node instanceof MapNode;
  }

  /** Whether it is a list. */
  public boolean isList() {
    return node instanceof ListNode;
  }

  /** Whether it is a scalar that a YAML reader may take for a number. */
  public boolean isNumber() {
    return node instanceof ScalarNode scalar && scalar.style() == Style.NUMBER;
  }

  /**
   * Reads it as a scalar.
   *
   * @param kind what it must be
   * @return the value, or nothing with the mistake noted
   */
  public <T> Got<T> as(Kind<T> kind) {
    if (!(node instanceof ScalarNode scalar)) {
      return fault(kind.noun() + " is needed", "");
    }
    if (scalar.style() == Style.REFUSED) {
      return Got.nothing();
    }
    if (scalar.style() == Style.EMPTY) {
      return fault(kind.noun() + " is needed", "");
    }
    if (!kind.styles().contains(scalar.style())) {
      return wrongStyle(scalar, kind);
    }
    try {
      return Got.of(kind.parser().parse(scalar.text()));
    } catch (NotUnderstood e) {
      String reason = e.getMessage().isEmpty() ? "" : " (" + e.getMessage() + ")";
      return fault(kind.noun() + " is needed" + reason, e.suggestion());
    }
  }

  private <T> Got<T> wrongStyle(ScalarNode scalar, Kind<T> kind) {
    if (scalar.style() != Style.QUOTED) {
      return fault(
          kind.noun() + " is needed, in quotes if it looks like a number or like yes and no", "");
    }
    String suggestion = "";
    try {
      kind.parser().parse(scalar.text());
      suggestion = "Did you mean " + scalar.text() + "?";
    } catch (NotUnderstood e) {
      suggestion = e.suggestion();
    }
    return fault(kind.noun() + " without quotes is needed", suggestion);
  }

  /**
   * Reads it as a map.
   *
   * @param mapping asks for the keys and builds
   * @return what was built, or nothing with the mistake noted
   */
  public <T> Got<T> map(Mapping<T> mapping) {
    if (!(node instanceof MapNode map)) {
      return needs("a map of keys");
    }
    return mapping.read(new Fields(reading, owner, map));
  }

  /**
   * Reads it as a list.
   *
   * @param item reads one item
   * @return the items, or nothing with the mistakes noted
   */
  public <T> Got<List<T>> list(Function<Value, Got<T>> item) {
    if (!(node instanceof ListNode list)) {
      return needs("a list");
    }
    List<T> items = new ArrayList<>();
    for (Node each : list.items()) {
      item.apply(new Value(reading, owner, each)).ifThere(items::add);
    }
    return items.size() == list.items().size() ? Got.of(List.copyOf(items)) : Got.nothing();
  }

  /**
   * Reads it as a map whose keys are names chosen by the writer of the file.
   *
   * @param entry reads one entry from its name and value
   * @return the entries in file order, or nothing with the mistakes noted
   */
  public <T> Got<Map<String, T>> entries(BiFunction<String, Value, Got<T>> entry) {
    if (!(node instanceof MapNode map)) {
      return needs("a map of names");
    }
    Map<String, T> entries = new LinkedHashMap<>();
    for (MapNode.Entry each : map.entries()) {
      entry
          .apply(each.key(), new Value(reading, owner, each.value()))
          .ifThere(value -> entries.put(each.key(), value));
    }
    return entries.size() == map.entries().size() ? Got.of(entries) : Got.nothing();
  }

  /**
   * Reads it as a list of numbers.
   *
   * @param count how many there must be
   * @param range what each may be
   * @return the numbers, or nothing with the mistakes noted
   */
  public Got<List<Double>> numbers(int count, Range range) {
    String needed = "a list of " + count + " numbers";
    if (!(node instanceof ListNode list)) {
      return needs(needed);
    }
    if (list.items().size() != count) {
      return wrongCount(list.items().size(), needed);
    }
    return list(item -> item.as(Kinds.number(range)));
  }

  /**
   * Notes that this list has not as many items as it needs.
   *
   * @param count how many it has
   * @param noun what is needed, with its article: {@code a list of 2 numbers}
   * @return nothing
   */
  public <T> Got<T> wrongCount(int count, String noun) {
    return note("has " + count + (count == 1 ? " item" : " items"), noun + " is needed", "");
  }

  private <T> Got<T> needs(String noun) {
    boolean told = node instanceof ScalarNode scalar && scalar.style() == Style.REFUSED;
    return told ? Got.nothing() : fault(noun + " is needed", "");
  }

  /**
   * Notes a mistake in this value, quoting it.
   *
   * @param allowed what would be right, as a clause: {@code a foot on the floor is needed}
   * @param suggestion a whole sentence that offers a repair, or empty
   * @return nothing
   */
  public <T> Got<T> fault(String allowed, String suggestion) {
    return note(node.given(), allowed, suggestion);
  }

  /**
   * Notes a mistake in this value.
   *
   * @param given what is there, as the middle of a sentence: {@code has 2 items}
   * @param allowed what would be right, as a clause
   * @param suggestion a whole sentence that offers a repair, or empty
   * @return nothing
   */
  public <T> Got<T> note(String given, String allowed, String suggestion) {
    reading.add(Fault.of(spot(), path(), given, allowed, suggestion));
    return Got.nothing();
  }
}
