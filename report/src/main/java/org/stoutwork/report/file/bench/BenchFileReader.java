package org.stoutwork.report.file.bench;

import java.nio.file.Path;
import org.stoutwork.report.file.field.FileReading;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.SourceReader;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * Reads bench files, strictly: what is not understood or cannot be built is refused, every mistake
 * in one go.
 */
public final class BenchFileReader {

  private BenchFileReader() {}

  /**
   * Reads a file.
   *
   * @param path the file, YAML or JSON
   * @param woods the woods that it may name
   * @return the bench, complete
   * @throws UnreadableFile with every mistake found, in file order
   */
  public static BenchFile read(Path path, WoodCatalogue woods) throws UnreadableFile {
    return read(SourceReader.read(path, Limits.STANDARD), woods);
  }

  /**
   * Reads a text.
   *
   * @param source the text with the name used in messages
   * @param woods the woods that it may name
   * @return the bench, complete
   * @throws UnreadableFile with every mistake found, in file order
   */
  public static BenchFile read(SourceText source, WoodCatalogue woods) throws UnreadableFile {
    BenchMapping mapping = new BenchMapping(woods);
    FileReading.Outcome<BenchFile> outcome =
        FileReading.text(source, Limits.STANDARD, mapping::read, new Completing());
    return Listed.of(outcome);
  }
}
