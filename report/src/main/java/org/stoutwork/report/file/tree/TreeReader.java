package org.stoutwork.report.file.tree;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a text into a tree. YAML without anchors, aliases, merge keys and tags, with unique keys
 * and one document; JSON is the part of YAML it is.
 */
public final class TreeReader {

  private TreeReader() {}

  /**
   * Reads a file into a tree.
   *
   * @param path the file
   * @param limits how much it may hold
   * @return the outermost node
   * @throws UnreadableFile with every mistake found
   */
  public static Node read(Path path, Limits limits) throws UnreadableFile {
    return read(SourceReader.read(path, limits), limits);
  }

  /**
   * Reads a text into a tree.
   *
   * @param source the text
   * @param limits how much it may hold
   * @return the outermost node
   * @throws UnreadableFile with every mistake found
   */
  public static Node read(SourceText source, Limits limits) throws UnreadableFile {
    Faults faults = new Faults();
    Optional<Node> node = read(source, limits, faults);
    faults.throwIfAny();
    return node.orElseThrow();
  }

  /**
   * Reads a text into a tree and gathers the mistakes, so that a reading of the tree can add its
   * own.
   *
   * @param source the text
   * @param limits how much it may hold
   * @param faults takes the mistakes
   * @return the outermost node; empty when the text could not be taken apart, in which case there
   *     is at least one mistake
   * @throws UnreadableFile when the text holds characters that are no text
   */
  public static Optional<Node> read(SourceText source, Limits limits, Faults faults)
      throws UnreadableFile {
    return new TreeBuilder(SourceReader.checked(source), limits, faults).build();
  }
}
