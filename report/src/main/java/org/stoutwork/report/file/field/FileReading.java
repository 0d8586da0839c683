package org.stoutwork.report.file.field;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.file.tree.Faults;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.Node;
import org.stoutwork.report.file.tree.SourceReader;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.TreeReader;
import org.stoutwork.report.file.tree.UnreadableFile;

/**
 * Reads a file with a mapping: {@code FileReading.file(path, Limits.STANDARD, mapping)}. Either
 * everything is right and a value comes back, or every mistake is thrown at once, in file order.
 */
public final class FileReading {

  /**
   * The outcome of a reading.
   *
   * @param value what the mapping built
   * @param defaults every default taken, in the order in which the mapping asked
   * @param <T> what was built
   */
  public record Outcome<T>(T value, List<DefaultTaken> defaults) {

    /** Copies the list. */
    public Outcome {
      defaults = List.copyOf(defaults);
    }
  }

  /**
   * What is done with a file after its keys were read: it may find further mistakes.
   *
   * @param <D> what the mapping gave
   * @param <T> what is made of it
   */
  @FunctionalInterface
  public interface SecondStep<D, T> {

    /**
     * Makes the value, or notes why it cannot be made.
     *
     * @param draft what the mapping gave, perhaps with gaps where mistakes were noted
     * @param root the outermost node, to find the spots of further mistakes
     * @param faults holds the mistakes noted so far and takes further ones
     * @return the value; empty when a mistake was noted
     */
    Optional<T> take(D draft, Node root, Faults faults);
  }

  private FileReading() {}

  /**
   * Reads a file.
   *
   * @param path the file
   * @param limits how much it may hold
   * @param mapping reads the outermost map
   * @return what the mapping built, and the defaults taken
   * @throws UnreadableFile with every mistake found
   */
  public static <T> Outcome<T> file(Path path, Limits limits, Mapping<T> mapping)
      throws UnreadableFile {
    return text(SourceReader.read(path, limits), limits, mapping);
  }

  /**
   * Reads a text.
   *
   * @param source the text with the name used in messages
   * @param limits how much it may hold
   * @param mapping reads the outermost map
   * @return what the mapping built, and the defaults taken
   * @throws UnreadableFile with every mistake found
   */
  public static <T> Outcome<T> text(SourceText source, Limits limits, Mapping<T> mapping)
      throws UnreadableFile {
    return text(source, limits, mapping, (value, root, faults) -> Optional.of(value));
  }

  /**
   * Reads a text in two steps, so that mistakes of both come back together in file order.
   *
   * @param source the text with the name used in messages
   * @param limits how much it may hold
   * @param mapping reads the outermost map
   * @param second makes the value of what the mapping gave
   * @return the value, and the defaults taken by the mapping
   * @throws UnreadableFile with every mistake found
   */
  public static <D, T> Outcome<T> text(
      SourceText source, Limits limits, Mapping<D> mapping, SecondStep<D, T> second)
      throws UnreadableFile {
    Faults faults = new Faults();
    Optional<Node> root = TreeReader.read(source, limits, faults);
    if (root.isEmpty()) {
      faults.throwIfAny();
    }
    Reading reading = new Reading(faults);
    Got<D> got = new Value(reading, null, root.orElseThrow()).map(mapping);
    reading.reportUnknownKeys();
    Optional<T> made =
        got.isThere() ? second.take(got.get(), root.get(), faults) : Optional.empty();
    faults.throwIfAny();
    return new Outcome<>(
        made.orElseThrow(
            () -> new IllegalStateException("a mapping gave nothing and noted no mistake")),
        reading.defaults());
  }
}
