package org.stoutwork.report.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.report.file.wood.WoodFact;
import org.stoutwork.report.file.wood.WoodFacts;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class WoodCommandTest {

  private static final WoodCatalogue WOODS = WoodCatalogue.load();

  /** What one run left. */
  private record Run(int exitCode, String out, String err) {

    String line(String start) {
      return out.lines().filter(l -> l.startsWith(start)).findFirst().orElse("no line " + start);
    }
  }

  private static Run run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    String[] all = new String[arguments.length + 1];
    all[0] = "wood";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    int exitCode = Stoutwork.run(console, all);
    return new Run(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static String words(String line) {
    return line.strip().replaceAll("\\s+", " ");
  }

  @Test
  void without_a_name_every_wood_is_listed_in_80_columns() {
    Run run = run();
    assertEquals(ExitCode.DONE, run.exitCode());
    assertEquals("", run.err());
    for (Wood wood : WOODS.all()) {
      String start = "  " + wood.key() + " ";
      assertTrue(run.out().lines().anyMatch(l -> l.startsWith(start)), wood.key());
    }
    run.out().lines().forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= 80, l));
    assertEquals("ash-white Ash, white 0.6 103 12000", words(run.line("  ash-white")));
    assertEquals("D30 hardwood 640 30 11000", words(run.line("  D30")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"oak-white", "White Oak", "quercus alba", "C24", "plywood-birch-18"})
  void a_name_shows_all_properties_with_unit_source_and_mark(String name) {
    Run run = run(name);
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.out().startsWith("A  "), run.out());
    assertTrue(run.out().contains("MPa"), run.out());
    assertTrue(run.out().contains("Sources of A"), run.out());
    assertTrue(run.out().matches("(?s).*\\((published|from memory|derived)\\):.*"), run.out());
    run.out().lines().forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= 80, l));
  }

  @Test
  void several_woods_stand_side_by_side() {
    Run run = run("ash-white", "oak-white", "C24");
    assertEquals(ExitCode.DONE, run.exitCode());
    List<String> bending =
        run.out()
            .lines()
            .filter(l -> l.startsWith("  bending strength "))
            .map(l -> words(l))
            .toList();
    assertEquals(
        List.of("bending strength green MPa 66 57", "bending strength dry MPa 103 105"), bending);
    assertTrue(
        run.out().lines().anyMatch(l -> words(l).equals("characteristic bending strength MPa 24")));
  }

  @Test
  void a_moisture_content_adds_means_between_dry_and_green() {
    Run run = run("oak-white", "--at", "18 %");
    assertEquals(ExitCode.DONE, run.exitCode());
    String at = run.out().lines().filter(l -> l.contains("at 18 %  MPa")).findFirst().orElseThrow();
    double bending = Double.parseDouble(at.substring(at.lastIndexOf(' ') + 1));
    assertTrue(bending > 57 && bending < 105, at);
    assertTrue(run.out().contains("worked out at 18 % moisture content"), run.out());
  }

  @Test
  void a_part_of_a_name_finds_all_woods_that_hold_it() {
    Run run = run("beec");
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.out().contains("beech-american"), run.out());
    assertTrue(run.out().contains("beech-european"), run.out());
    assertFalse(run.out().contains("oak"), run.out());
  }

  @Test
  void a_misspelt_name_is_refused_with_the_nearest_ones() {
    Run run = run("oka-whit");
    assertEquals(ExitCode.BAD_INPUT, run.exitCode());
    assertEquals("", run.out());
    assertEquals(
        "no wood is known as \"oka-whit\"; the nearest names are:",
        run.err().lines().findFirst().orElseThrow());
    assertTrue(run.err().lines().skip(1).findFirst().orElse("").contains("oak-white"), run.err());
  }

  @Test
  void names_that_several_woods_bear_are_compared_by_the_one_in_widest_use() {
    Run run = run("ash", "beech", "oak");
    assertEquals(ExitCode.DONE, run.exitCode());
    assertEquals("", run.err());
    List<String> lines = run.out().lines().toList();
    assertEquals(
        List.of(
            "\"ash\" is several woods: ash-white is shown; it could also be ash-european,",
            "  ash-black, ash-blue, ash-green and 1 more."),
        lines.subList(0, 2));
    assertTrue(lines.stream().anyMatch(l -> l.startsWith("A  ash-white:")), run.out());
    assertTrue(lines.stream().anyMatch(l -> l.startsWith("B  beech-")), run.out());
    assertTrue(lines.stream().anyMatch(l -> l.startsWith("C  oak-")), run.out());
    lines.forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= 80, l));
  }

  @Test
  void a_choice_is_said_beside_the_json_and_in_it() throws IOException {
    Run run = run("C24", "oak", "--results", "-");
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.err().startsWith("\"oak\" is several woods: oak-northern-red is shown;"));
    JsonNode choice = new ObjectMapper().readTree(run.out()).at("/choices/0");
    assertEquals("oak", choice.get("asked").asText());
    assertEquals("oak-northern-red", choice.get("shown").asText());
    assertEquals("oak-white", choice.at("/couldAlsoBe/0").asText());
    assertEquals(18, choice.get("couldAlsoBe").size());
  }

  @Test
  void a_part_of_a_name_that_fits_several_woods_is_no_column() {
    Run run = run("ash-white", "beec");
    assertEquals(ExitCode.BAD_INPUT, run.exitCode());
    assertEquals("", run.out());
    assertTrue(
        run.err().startsWith("\"beec\" could be any of these; say which:\n  beech-"), run.err());
  }

  @Test
  void one_ambiguous_name_alone_asks_which() {
    Run run = run("oak");
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.out().startsWith("Species:"), run.out());
    assertTrue(run.out().contains("oak-european"), run.out());
  }

  @Test
  void below_8_percent_the_limit_of_the_law_is_said() {
    Run dry = run("oak-white", "--at", "6");
    assertTrue(dry.out().contains("Below 8 % no further gain in strength is counted"), dry.out());
    assertFalse(run("oak-white", "--at", "8").out().contains("Below 8 %"));
    String bending = "bending strength at %s % MPa 127";
    assertTrue(
        dry.out().lines().anyMatch(l -> words(l).equals(bending.replace("%s", "6"))), dry.out());
  }

  @Test
  void a_mean_worked_out_from_published_values_is_marked_derived() {
    Run run = run("ash-white", "--at", "9");
    assertTrue(
        run.out()
            .contains(
                "worked out at 9 % moisture content from the values named here" + " (derived):"),
        run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "31 %", "wet", "-8", "9,5"})
  void a_moisture_content_that_no_bench_has_is_refused(String at) {
    Run run = run("oak-white", "--at=" + at);
    assertEquals(ExitCode.BAD_INPUT, run.exitCode());
    assertEquals(
        "--at is \"" + at + "\"; a moisture content from 3 % to 30 % is needed, such as 9",
        run.err().strip());
  }

  @Test
  void json_on_standard_output_stands_alone_and_states_each_unit_once() throws IOException {
    Run run = run("oak-white", "C24", "--results", "-");
    assertEquals(ExitCode.DONE, run.exitCode());
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals(1, json.get("schemaVersion").asInt());
    assertEquals("MPa", json.get("units").get("modulus").asText());
    assertEquals(
        List.of("oak-white", "C24"),
        json.get("woods").findValuesAsText("key").stream()
            .filter(key -> WOODS.byKey(key).isPresent())
            .toList());
    JsonNode dry = property(json.get("woods").get(0), "modulus", "dry");
    assertEquals(12300, dry.get("value").asDouble(), 1e-9);
    assertEquals("published", dry.get("mark").asText());
    JsonNode strength = property(json.get("woods").get(1), "classBending", "");
    assertEquals(24, strength.get("value").asDouble());
  }

  private static JsonNode property(JsonNode wood, String key, String state) {
    return StreamSupport.stream(wood.get("properties").spliterator(), false)
        .filter(p -> p.get("key").asText().equals(key))
        .filter(p -> p.path("state").asText().equals(state))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void every_key_of_the_json_has_one_unit_for_all_woods() {
    Map<String, String> units = new HashMap<>();
    for (Wood wood : WOODS.all()) {
      for (WoodFact fact : WoodFacts.of(wood, OptionalDouble.of(9))) {
        String unit = fact.property().unit().symbol();
        assertEquals(unit, units.computeIfAbsent(fact.key(), key -> unit), fact.key());
      }
    }
    assertTrue(units.size() > 40);
  }

  @Test
  void json_in_a_file_leaves_the_table_on_standard_output(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("ash.json");
    Run run = run("ash-white", "--results", file.toString());
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.out().startsWith("A  ash-white"), run.out());
    assertEquals(
        "ash-white",
        new ObjectMapper().readTree(Files.readString(file)).at("/woods/0/key").asText());
  }

  @Test
  void the_help_has_an_example() {
    Run run = run("--help");
    assertEquals(ExitCode.DONE, run.exitCode());
    assertTrue(run.out().contains("Example: stoutwork wood oak-white ash-white --at \"9 %\""));
    assertTrue(run.out().contains("from 3 % to 30 %"), run.out());
  }
}
