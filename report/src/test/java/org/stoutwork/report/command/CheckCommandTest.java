package org.stoutwork.report.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {

  private static final String ADEQUATE = "examples/class-bench-improved.yaml";
  private static final String INADEQUATE = "examples/class-bench.yaml";

  private static final String BENCH =
      """
      bench: workshop bench
      wood: oak, white
      height: 840 mm
      top: {length: 1730 mm, width: 610 mm, thickness: 64 mm}
      """;

  @TempDir private Path folder;
  private Path input;

  @BeforeEach
  void write() throws IOException {
    input = Files.writeString(folder.resolve("bench.yaml"), BENCH);
  }

  private static Run check(Object... arguments) {
    return Run.of(
        Stream.concat(Stream.of("check"), Stream.of(arguments).map(Object::toString))
            .toArray(String[]::new));
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private static void fits(String text) {
    text.lines()
        .forEach(
            line -> assertTrue(line.codePointCount(0, line.length()) <= 80, "too long: " + line));
  }

  @Test
  void an_adequate_bench_ends_with_0_and_says_so_first() {
    Run run = check(ADEQUATE);
    assertEquals(0, run.exitCode(), run.out());
    assertEquals("", run.err());
    assertTrue(run.out().matches("(?s)Verdict: (adequate|marginal).*"), run.out());
    assertFalse(run.out().contains("Inadequate:"));
    assertTrue(run.out().contains(" 0 inadequate\n"), run.out());
    fits(run.out());
  }

  @Test
  void an_inadequate_bench_ends_with_1_and_names_what_governs() {
    Run run = check(INADEQUATE);
    assertEquals(1, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("Verdict: inadequate. class bench\n\nGoverns: "), run.out());
    assertTrue(run.out().contains("\nInadequate:\n"));
    assertTrue(run.out().replaceAll("\\s+", " ").contains("jaw of the front vise"), run.out());
    assertTrue(run.out().contains("\nNot checked: Blows"), run.out());
    assertTrue(run.out().contains("\nRacking along the bench: "));
    assertTrue(run.out().contains("values were not given and filled in; --full lists them"));
    assertTrue(run.out().contains("\nWARNING C-30"));
    assertTrue(
        run.out()
            .replace('\u00a0', ' ')
            .contains(
                "\nMade otherwise than the trade does; nothing fails by it:\n  tenon thickness"),
        run.out());
    assertTrue(
        run.out()
            .replace('\u00a0', ' ')
            .contains(
                "\n  horn beyond the mortise 10 mm: left top rail into left front leg; 25 mm"),
        run.out());
    fits(run.out());
  }

  @Test
  void everything_is_listed_when_asked_for() {
    Run brief = check(input);
    Run full = check(input, "--full");
    assertEquals(brief.exitCode(), full.exitCode());
    assertTrue(full.out().lines().count() > 2 * brief.out().lines().count());
    assertFalse(full.out().contains(" more\n"));
    assertTrue(full.out().contains("NOTICE C-02"));
    assertTrue(full.out().contains("endFrames.topRail"), full.out());
    fits(full.out());
  }

  @Test
  void results_on_standard_output_have_it_to_themselves() throws IOException {
    Run run = check(input, "--results", "-");
    JsonNode results = new ObjectMapper().readTree(run.out());
    assertEquals(1, results.get("schemaVersion").intValue());
    assertEquals("workshop bench", results.at("/bench/name").textValue());
    assertTrue(run.err().startsWith("Verdict: "), run.err());
    assertEquals(
        run.exitCode() == 1, results.get("verdict").textValue().equals("inadequate"), run.err());
    fits(run.err());
  }

  @Test
  void all_outputs_are_written_and_nothing_else_is_left() throws IOException {
    Path sheet = folder.resolve("sheet.pdf");
    Path results = folder.resolve("results.json");
    Path model = folder.resolve("model.json");
    Run run = check(input, "--sheet", sheet, "--results", results, "--model", model);
    assertTrue(run.exitCode() <= 1, run.err());
    assertEquals(List.of("bench.yaml", "model.json", "results.json", "sheet.pdf"), files());
    assertTrue(
        run.out()
            .endsWith("Sheet: " + sheet + "\nResults: " + results + "\nModel: " + model + "\n"),
        run.out());
    byte[] start = java.util.Arrays.copyOf(Files.readAllBytes(sheet), 5);
    assertArrayEquals("%PDF-".getBytes(StandardCharsets.US_ASCII), start);
    assertEquals(check(input, "--results", "-").out(), Files.readString(results));
    Run solved = Run.of("frame", model.toString());
    assertEquals(0, solved.exitCode(), solved.err());
    assertTrue(solved.out().startsWith("workshop bench: "), solved.out());
  }

  @Test
  void the_same_bench_gives_the_same_files() throws IOException {
    Path sheet = folder.resolve("sheet.pdf");
    Path model = folder.resolve("model.json");
    check(input, "--sheet", sheet, "--model", model);
    byte[] firstSheet = Files.readAllBytes(sheet);
    String firstModel = Files.readString(model);
    check(input, "--sheet", sheet, "--model", model);
    assertArrayEquals(firstSheet, Files.readAllBytes(sheet));
    assertEquals(firstModel, Files.readString(model));
  }

  @Test
  void a_directory_gets_the_models_of_all_topics() throws IOException {
    Path models = Files.createDirectory(folder.resolve("models"));
    Run run = check(input, "--model", models);
    assertTrue(run.exitCode() <= 1, run.err());
    try (Stream<Path> written = Files.list(models)) {
      List<Path> all = written.sorted().toList();
      assertEquals(4, all.size(), all.toString());
      for (Path each : all) {
        assertEquals(0, Run.of("frame", each.toString()).exitCode());
      }
    }
  }

  @Test
  void units_and_paper_change_what_people_read_and_not_the_results() throws IOException {
    Path a = folder.resolve("a.pdf");
    Path b = folder.resolve("b.pdf");
    Run si = check(input, "--sheet", a);
    Run inches = check(input, "--sheet", b, "--units", "inch-pound", "--paper", "letter");
    assertEquals(si.exitCode(), inches.exitCode());
    assertTrue(si.out().contains(" N/mm, sways "), si.out());
    assertTrue(inches.out().contains(" lbf/in, sways "), inches.out());
    assertFalse(inches.out().matches("(?s).*\\d mm from the.*"), inches.out());
    assertFalse(java.util.Arrays.equals(Files.readAllBytes(a), Files.readAllBytes(b)));
    assertEquals(
        check(input, "--results", "-").out(),
        check(input, "--results", "-", "--units", "inch-pound").out());
  }

  @Test
  void a_file_with_mistakes_ends_with_2_and_leaves_old_outputs() throws IOException {
    Path sheet = Files.writeString(folder.resolve("sheet.pdf"), "old");
    Files.writeString(input, BENCH.replace("oak, white", "oak, whyte").replace("840", "-840"));
    Run run = check(input, "--sheet", sheet, "--results", "-");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertEquals(2, run.err().lines().filter(l -> l.startsWith(input + ":")).count(), run.err());
    assertEquals("old", Files.readString(sheet));
    assertEquals(List.of("bench.yaml", "sheet.pdf"), files());
  }

  @Test
  void all_keys_are_listed_for_an_unknown_one_the_nearest_first_in_lines_that_fit()
      throws IOException {
    Files.writeString(input, BENCH + "stretcher: []\n");
    Run run = check(input);
    assertEquals(2, run.exitCode());
    String said = run.err().replaceAll("\\s+", " ");
    assertTrue(said.contains("known are stretchers, schemaVersion, bench, units, "), said);
    assertTrue(said.contains("vises, weights, actions, woods. Did you mean"), said);
    assertFalse(said.contains("others"), said);
    run.err()
        .lines()
        .skip(1)
        .forEach(line -> assertTrue(line.startsWith("    ") && line.length() <= 80, line));
  }

  @Test
  void a_loose_bench_ends_with_3_and_the_name_of_the_loose_part() throws IOException {
    Files.writeString(
        input,
        BENCH
            + """
            stretchers:
              - {line: both, bottomEdgeAt: 320, joint: {kind: bridle, hold: dry}}
            """);
    Run run = check(input);
    assertEquals(3, run.exitCode(), run.out() + run.err());
    assertEquals("", run.out());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().startsWith("the bench cannot stand"), run.err());
    assertTrue(run.err().contains("leg"), run.err());
  }

  @Test
  void an_absent_file_and_a_directory_are_named_without_a_trace() {
    for (Path wrong : List.of(folder.resolve("absent.yaml"), folder)) {
      Run run = check(wrong);
      assertEquals(2, run.exitCode());
      assertEquals("", run.out());
      assertTrue(run.err().startsWith(wrong.toString()), run.err());
      assertFalse(run.err().contains("Exception"), run.err());
      assertFalse(run.err().contains("\tat "), run.err());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"--sheet", "--results", "--model"})
  void outputs_that_cannot_be_written_are_refused_before_the_work(String option)
      throws IOException {
    Path nowhere = folder.resolve("absent").resolve("out");
    Run run = check(input, option, nowhere);
    assertEquals(2, run.exitCode());
    assertTrue(run.err().startsWith(nowhere + " cannot be written: "), run.err());
    Run over = check(input, option, input);
    assertEquals(2, over.exitCode());
    assertTrue(over.err().contains("it is the input"), over.err());
    assertEquals(BENCH, Files.readString(input));
    if (!option.equals("--model")) {
      Run directory = check(input, option, folder);
      assertEquals(2, directory.exitCode());
      assertTrue(directory.err().contains("it is a directory"), directory.err());
    }
  }

  @Test
  void two_outputs_need_two_names() throws IOException {
    Path same = folder.resolve("out.json");
    Run run = check(input, "--results", same, "--model", folder.resolve("./out.json"));
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("is named for two outputs"), run.err());
    assertEquals(List.of("bench.yaml"), files());
  }

  @Test
  void only_results_go_to_standard_output() {
    for (String option : List.of("--sheet", "--model")) {
      Run run = check(input, option, "-");
      assertEquals(2, run.exitCode());
      assertTrue(run.err().startsWith(option + " needs the name of a file"), run.err());
    }
  }

  @Test
  void wrong_words_of_options_end_with_2() {
    Run units = check(input, "--units", "furlong");
    assertEquals(2, units.exitCode());
    assertTrue(units.err().contains("'furlong' is none of inch-pound, si"), units.err());
    assertEquals(2, check(input, "--paper", "A3").exitCode());
    assertEquals(2, check().exitCode());
    assertEquals(2, check(input, "--shet", "x.pdf").exitCode());
  }

  @Test
  void help_shows_an_example_within_80_columns() {
    Run run = check("--help");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(
        run.out().contains("\nExample: stoutwork check bench.yaml --sheet bench-sheet.pdf\n"));
    fits(run.out());
  }

  @Test
  void written_files_may_be_read_by_whom_the_system_says() throws IOException {
    Path results = folder.resolve("results.json");
    Path usual = Files.writeString(folder.resolve("usual.txt"), "as the system has it");
    check(input, "--results", results);
    Set<PosixFilePermission> expected = Files.getPosixFilePermissions(usual);
    assertEquals(expected, Files.getPosixFilePermissions(results));
  }

  @Test
  void a_sheet_is_written_though_nothing_carries_a_pull() throws IOException {
    Files.writeString(
        input,
        BENCH.replace("wood: oak, white", "wood: D30")
            + "stretchers:\n  - {line: both, bottomEdgeAt: 140 mm, joint: \"housing, screwed\"}\n");
    Path sheet = folder.resolve("sheet.pdf");
    Run run = check(input, "--sheet", sheet);
    assertEquals(1, run.exitCode(), run.err());
    assertTrue(run.out().contains(">999"), run.out());
    assertTrue(Files.size(sheet) > 20_000);
  }
}
