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
    Faults faults = new Faults();
    Optional<Node> root = TreeReader.read(source, limits, faults);
    if (root.isEmpty()) {
      faults.throwIfAny();
    }
    Reading reading = new Reading(faults);
    Got<T> got = new Value(reading, null, root.orElseThrow()).map(mapping);
    reading.reportUnknownKeys();
    faults.throwIfAny();
    if (!got.isThere()) {
      throw new IllegalStateException("a mapping gave nothing and noted no mistake");
    }
    return new Outcome<>(got.get(), reading.defaults());
  }
}
