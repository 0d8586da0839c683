package org.stoutwork.report.file.frame;

import java.nio.file.Path;
import org.stoutwork.report.file.field.FileReading;
import org.stoutwork.report.file.field.FileReading.Outcome;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

/** Reads frame files, strictly: what is not understood is refused, every mistake in one go. */
public final class FrameFileReader {

  /** Ten million bytes: frames are also written by programs. */
  public static final Limits LIMITS = new Limits(10_000_000, 32);

  private FrameFileReader() {}

  /**
   * Reads a file.
   *
   * @param path the file, JSON or YAML
   * @return what it says, and the defaults taken
   * @throws UnreadableFile with every mistake found
   */
  public static Outcome<FrameFile> read(Path path) throws UnreadableFile {
    return FileReading.file(path, LIMITS, FrameMapping::read);
  }

  /**
   * Reads a text.
   *
   * @param source the text with the name used in messages
   * @return what it says, and the defaults taken
   * @throws UnreadableFile with every mistake found
   */
  public static Outcome<FrameFile> read(SourceText source) throws UnreadableFile {
    return FileReading.text(source, LIMITS, FrameMapping::read);
  }
}
