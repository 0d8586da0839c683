package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

/** Everything that is said of a broken file, word by word. */
class BrokenBenchTest {

  private static String message(String text) {
    return assertThrows(
            UnreadableFile.class,
            () -> BenchFileReader.read(new SourceText("bench.yaml", text), ExampleFilesTest.WOODS))
        .getMessage();
  }

  static Stream<BrokenBench> broken() {
    return BrokenBench.all().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void a_broken_file_is_refused_with_what_is_wrong_and_what_would_be_right(BrokenBench broken) {
    assertEquals(broken.message(), message(broken.text()));
  }

  @Test
  void mistakes_of_writing_and_of_building_come_together_in_file_order() {
    String text =
        BrokenBench.SOUND
            .replace("wood: beech, European", "wood: beech, Europian\nduty: planing hard")
            .replace("tenonThickness: 16", "tenonThickness: 46")
            .replace("at: 300", "at: 1800, clampforce: 4 kN")
            .replace("1.1 kN", "-1.1 kN");
    assertEquals(
        "bench.yaml:3:1  wood is \"beech, Europian\"; no such wood is known; the"
            + " nearest names are beech-european, birch-european, larch-european.\n"
            + "bench.yaml:4:7  duty is \"planing hard\"; one of light assembly, general"
            + " joinery, heavy planing or machine support is needed.\n"
            + "bench.yaml:18:7  endFrames.topRail.joint.tenonThickness is 46 mm; at most 45"
            + " mm, the thickness of the rail.\n"
            + "bench.yaml:24:19  vises[0].at is 1800 mm; 0 mm to 1700 mm is allowed.\n"
            + "bench.yaml:24:29  vises[0].clampforce is no key known here; known are clampForce,"
            + " name, edge, at, mass, outreach, jawWidth. Did you mean \"clampForce\"?\n"
            + "bench.yaml:26:37  actions[0].force is \"-1.1 kN\"; a force such as `900 N` or"
            + " `200 lbf` above 0 N is needed.",
        message(text));
  }

  @Test
  void what_rests_on_a_refused_value_is_not_judged() {
    String text =
        BrokenBench.SOUND
            .replace("thickness: 64", "thickness: 64 mum")
            .replace("bottomEdgeAt: 140", "bottomEdgeAt: 700");
    assertEquals(
        "bench.yaml:8:14  top.thickness is \"64 mum\"; a length such as `120 mm` or `4"
            + " 3/4 in` above 0 mm is needed (\"mum\" is no unit known here). Did you mean"
            + " \"64 mm\"?",
        message(text));
  }

  @Test
  void a_fault_of_listed_end_frames_stands_where_the_value_was_given() {
    String own = BrokenBench.LISTED.replace("along: 3 1/2", "along: 20");
    assertEquals(
        "bench.yaml:19:34  endFrames[2].legs.along is 508 mm; 30 mm to 300 mm is" + " allowed.",
        message(own));
    String shared = BrokenBench.LISTED.replace("across: 3}", "across: 20}");
    assertEquals(
        "bench.yaml:14:20  everyEndFrame.legs.across is 508 mm; 30 mm to 300 mm is allowed.",
        message(shared));
  }

  @Test
  void an_alias_bomb_is_refused_without_being_expanded() {
    String bomb = "bench: &a [x, x]\nwood: &b [*a, *a]\ntop: [*b, *b]\n";
    assertEquals(
        "bench.yaml:1:8  bench carries an anchor (&); write values out; anchors are"
            + " not read.\n"
            + "bench.yaml:1:8  bench is a list; text is needed.\n"
            + "bench.yaml:2:7  wood carries an anchor (&); write values out; anchors are not"
            + " read.\n"
            + "bench.yaml:2:7  wood is a list; text is needed.\n"
            + "bench.yaml:2:11  wood[0] is an alias (*); write the value out; aliases are"
            + " not read.\n"
            + "bench.yaml:2:15  wood[1] is an alias (*); write the value out; aliases are"
            + " not read.\n"
            + "bench.yaml:3:6  top is a list; a map of keys is needed.\n"
            + "bench.yaml:3:7  top[0] is an alias (*); write the value out; aliases are not"
            + " read.\n"
            + "bench.yaml:3:11  top[1] is an alias (*); write the value out; aliases are not"
            + " read.",
        message(bomb));
  }

  @Test
  void a_file_nested_too_deeply_is_refused() {
    String deep = "top: " + "[".repeat(5000) + "]".repeat(5000) + "\n";
    assertEquals(
        "bench.yaml:1:37 "
            + " top[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0]… is nested too"
            + " deeply; at most 32 levels of maps and lists are read.",
        message(deep));
  }

  @Test
  void a_huge_file_is_refused_before_it_is_read(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("huge.yaml");
    Files.writeString(file, "bench: " + "x".repeat(1_000_100) + "\n");
    UnreadableFile refused =
        assertThrows(
            UnreadableFile.class, () -> BenchFileReader.read(file, ExampleFilesTest.WOODS));
    assertEquals(
        file + "  the file has 1 000 108 bytes; a file of at most 1 000 000 bytes is read.",
        refused.getMessage());
  }

  @Test
  void a_file_that_is_not_there_is_named(@TempDir Path folder) {
    Path file = folder.resolve("absent.yaml");
    UnreadableFile refused =
        assertThrows(
            UnreadableFile.class, () -> BenchFileReader.read(file, ExampleFilesTest.WOODS));
    assertEquals(
        file + "  the file does not exist; the name of an existing file is needed.",
        refused.getMessage());
  }
}
