package org.stoutwork.report.file.field;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Faults;
import org.stoutwork.report.file.tree.MapNode;
import org.stoutwork.report.file.tree.Nearest;
import org.stoutwork.report.file.tree.Quote;

/** Words for keys that a map does not know: the nearest one, or the level where it belongs. */
final class UnknownKeys {

  private UnknownKeys() {}

  static void report(Fields fields, Faults faults) {
    for (MapNode.Entry entry : fields.unknown()) {
      faults.add(
          Fault.of(
              entry.spot(),
              fields.path().key(entry.key()),
              "is no key known here",
              knownHere(entry.key(), fields),
              faults.count() < Faults.MOST ? suggestion(entry.key(), fields) : ""));
    }
  }

  /** All keys of the level, the one most like what was written first. */
  private static String knownHere(String key, Fields fields) {
    Set<String> known = new LinkedHashSet<>();
    Nearest.to(key, fields.known()).ifPresent(known::add);
    known.addAll(fields.known());
    if (known.isEmpty()) {
      return "no keys are read here";
    }
    return "known are " + String.join(", ", known);
  }

  private static String suggestion(String key, Fields fields) {
    Optional<String> here = Nearest.sameInOtherSpelling(key, fields.known());
    if (here.isPresent()) {
      return Nearest.question(here);
    }
    Optional<String> elsewhere = above(key, fields).or(() -> below(key, fields));
    return elsewhere.orElseGet(() -> Nearest.question(Nearest.to(key, fields.known())));
  }

  private static Optional<String> above(String key, Fields fields) {
    return fields
        .parent()
        .flatMap(
            parent ->
                Nearest.sameInOtherSpelling(key, parent.known())
                    .map(word -> upwards(word, fields.path().keyBelow(parent.path()))));
  }

  private static String upwards(String word, String beside) {
    return Quote.of(word) + " belongs one level up, beside " + Quote.of(beside) + ".";
  }

  private static Optional<String> below(String key, Fields fields) {
    return fields.children().stream()
        .flatMap(
            child ->
                Nearest.sameInOtherSpelling(key, child.known())
                    .map(
                        word ->
                            Quote.of(word) + " belongs one level down, in " + child.path() + ".")
                    .stream())
        .findFirst();
  }
}
