package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class ExampleFilesTest {

  static final Path FOLDER = Path.of("examples");
  static final WoodCatalogue WOODS = WoodCatalogue.load();

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void there_are_seven_examples() throws IOException {
    assertEquals(7, examples().size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void every_example_reads_and_completes_without_a_fault(Path file) throws UnreadableFile {
    BenchFile read = BenchFileReader.read(file, WOODS);
    assertTrue(read.bench().endFrames().size() >= 2);
    assertTrue(read.bench().stretchers().size() >= 2);
  }
}
