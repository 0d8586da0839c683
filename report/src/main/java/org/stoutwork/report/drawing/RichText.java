package org.stoutwork.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Text with bold and italic stretches and with indices. {@link Markup} makes it from a string;
 * {@link #plain} takes a string as it is, which is the way for names that a user chose.
 *
 * @param runs in reading order
 */
public record RichText(List<Run> runs) {

  /** No text. */
  public static final RichText EMPTY = new RichText(List.of());

  /** Keeps its own copy. */
  public RichText {
    runs = List.copyOf(runs);
  }

  /** The characters as they are, in the regular face. */
  public static RichText plain(String text) {
    return plain(text, Face.REGULAR);
  }

  /** The characters as they are. */
  public static RichText plain(String text, Face face) {
    return text.isEmpty() ? EMPTY : new RichText(List.of(Run.of(text, face, Level.BASE)));
  }

  /** Text with markup; see {@link Markup}. */
  public static RichText of(String markup) {
    return Markup.parse(markup);
  }

  /** This text and another after it. */
  public RichText then(RichText other) {
    return new RichText(Stream.concat(runs.stream(), other.runs.stream()).toList());
  }

  /** All regular stretches in another face; what stands out already stays as it is. */
  public RichText in(Face face) {
    return new RichText(
        runs.stream()
            .map(
                r ->
                    r.face() == Face.REGULAR
                        ? new Run(r.text(), face, r.level(), r.reference())
                        : r)
            .toList());
  }

  /** Every reference replaced by what the resolver says its name stands for. */
  public RichText resolved(UnaryOperator<String> resolver) {
    List<Run> done = new ArrayList<>(runs.size());
    for (Run run : runs) {
      done.add(run.reference() ? run.with(resolver.apply(run.text())) : run);
    }
    return new RichText(done);
  }

  /** Whether there is nothing to print. */
  public boolean isEmpty() {
    return runs.stream().allMatch(run -> run.text().isEmpty());
  }

  /** The characters alone. */
  public String characters() {
    return runs.stream().map(Run::text).collect(Collectors.joining());
  }
}
