package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
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
  void there_are_eight_examples() throws IOException {
    assertEquals(8, examples().size());
  }

  @Test
  void the_examples_use_more_than_eight_kinds_of_joint() throws IOException, UnreadableFile {
    Set<String> kinds = new TreeSet<>();
    for (Path file : examples()) {
      Bench bench = BenchFileReader.read(file, WOODS).bench();
      bench.stretchers().forEach(s -> kinds.add(s.joint().joint().title()));
      for (EndFrame frame : bench.endFrames()) {
        kinds.add(frame.topRail().joint().joint().title());
        frame.bottomRail().ifPresent(rail -> kinds.add(rail.joint().joint().title()));
        frame.foot().ifPresent(foot -> kinds.add(foot.joint().joint().title()));
      }
    }
    assertTrue(kinds.size() >= 10, kinds.toString());
    Set<String> some =
        Set.of(
            "glued twin mortise and tenon",
            "glued fox-wedged mortise and tenon",
            "glued drawbored haunched mortise and tenon",
            "loose-wedge tenon",
            "screwed half-lap",
            "butt joint with 2 dowels",
            "stub tenon with two bed bolts");
    assertTrue(kinds.containsAll(some), kinds.toString());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void every_example_reads_and_completes_without_a_fault(Path file) throws UnreadableFile {
    BenchFile read = BenchFileReader.read(file, WOODS);
    assertTrue(read.bench().endFrames().size() >= 2);
    assertTrue(read.bench().stretchers().size() >= 2);
  }
}
