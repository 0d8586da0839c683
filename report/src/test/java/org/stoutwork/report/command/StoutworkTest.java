package org.stoutwork.report.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoutworkTest {

  /** A cantilever 910 mm long, 120 N at its end: N, mm, MPa. */
  private static final String BRACKET =
      """
      title: bracket
      nodes:
        wall: [0, 0, 740]
        tip: [910, 0, 740]
      materials:
        ash: {E: 12300, G: 780, density_kg_m3: 650}
      sections:
        bar: {A: 3600, Iy: 1.08e6, Iz: 1.07e6, J: 1.83e6}
      members:
        bar: {from: wall, to: tip, section: bar, material: ash}
      supports:
        wall: {ux: fixed, uy: fixed, uz: fixed, rx: fixed, ry: fixed, rz: fixed}
      loads:
        - {type: node, node: tip, force: [0, 0, -120]}
      """;

  @TempDir private Path folder;
  private Path input;

  @BeforeEach
  void write() throws IOException {
    input = Files.writeString(folder.resolve("bracket.yaml"), BRACKET);
  }

  private static Run run(String... arguments) {
    return Run.of(arguments);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void a_frame_is_solved_and_shown() {
    Run run = run("frame", input.toString());
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    List<String> lines = run.out().lines().toList();
    assertEquals("bracket", lines.get(0));
    // F L³ / (3 E I) = 120 · 910³ / (3 · 12300 · 1.08e6) = 2.269 mm
    assertTrue(run.out().contains("\n  tip    0   0  −2.269   0  0.00374   0\n"), run.out());
    assertTrue(run.out().contains("\n  wall   0   0  120   0  −109200   0\n"), run.out());
  }

  @Test
  void results_on_standard_output_have_it_to_themselves() throws IOException {
    Run run = run("frame", input.toString(), "--results", "-");
    assertEquals(0, run.exitCode());
    assertTrue(run.err().startsWith("bracket\n"), run.err());
    JsonNode results = new ObjectMapper().readTree(run.out());
    assertEquals(1, results.get("schemaVersion").intValue());
    double sag = results.at("/displacements/tip/2").doubleValue();
    assertEquals(-120 * Math.pow(910, 3) / (3 * 12300 * 1.08e6), sag, 1e-9);
    assertEquals(120, results.at("/reactions/wall/2").doubleValue(), 1e-9);
    assertEquals(5, results.at("/members/bar/internal").size());
    assertEquals(227.5, results.at("/members/bar/internal/1/x").doubleValue(), 1e-9);
    assertEquals(120 * 682.5, results.at("/members/bar/internal/1/forces/4").doubleValue(), 1e-6);
    assertEquals(910, results.at("/members/bar/extremes/deflection/x").doubleValue());
    assertEquals("y", results.at("/members/bar/extremes/M/axis").textValue());
    assertTrue(results.get("equilibriumError").doubleValue() < 1e-10);
  }

  @Test
  void results_go_to_a_file_and_nothing_else_is_left() throws IOException {
    Path target = folder.resolve("results.json");
    Run run = run("frame", input.toString(), "--results=" + target);
    assertEquals(0, run.exitCode());
    assertTrue(run.out().startsWith("bracket\n"));
    assertEquals(run("frame", input.toString(), "--results", "-").out(), Files.readString(target));
    assertEquals(List.of("bracket.yaml", "results.json"), files());
  }

  /** Words without the breaks of lines. */
  private static String flowing(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  @Test
  void a_file_with_mistakes_ends_with_2_and_leaves_the_old_results() throws IOException {
    Path target = Files.writeString(folder.resolve("results.json"), "old");
    Files.writeString(input, BRACKET.replace("E: 12300", "E: -5"));
    Run run = run("frame", input.toString(), "--results", target.toString());
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertEquals(
        input + ":6:12 materials.ash.E is -5; a number above 0 is needed.", flowing(run.err()));
    assertTrue(run.err().startsWith(input + ":6:12  "), run.err());
    assertEquals("old", Files.readString(target));
  }

  @Test
  void a_loose_frame_ends_with_3_in_one_line() throws IOException {
    Files.writeString(input, BRACKET.replace(", rx: fixed", ""));
    Run run = run("frame", input.toString());
    assertEquals(3, run.exitCode());
    assertEquals("", run.out());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("about x"), run.err());
  }

  @Test
  void results_over_the_input_are_refused_before_anything_is_done() throws IOException {
    Run run = run("frame", input.toString(), "--results", input.toString());
    assertEquals(2, run.exitCode());
    assertEquals(input + " cannot be written: it is the input; give another name\n", run.err());
    assertEquals(BRACKET, Files.readString(input));
  }

  @Test
  void results_into_nowhere_are_refused() {
    Path target = folder.resolve("absent").resolve("results.json");
    Run run = run("frame", input.toString(), "--results", target.toString());
    assertEquals(2, run.exitCode());
    assertEquals(
        target
            + " cannot be written: the directory "
            + target.getParent()
            + " does not exist; make it first\n",
        run.err());
    assertEquals("", run.out());
  }

  @Test
  void wrong_arguments_end_with_2_and_point_to_the_help() {
    Run run = run("frame", input.toString(), "--result", "-");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("--result"), run.err());
    assertTrue(run.err().endsWith("`stoutwork frame --help` shows how to write it.\n"), run.err());
    assertEquals(2, run().exitCode());
    assertEquals(2, run("farme").exitCode());
    assertEquals(2, run("frame").exitCode());
    assertEquals(2, run("frame", "").exitCode());
    assertEquals(2, run("frame", "a\0b").exitCode());
  }

  @Test
  void help_shows_an_example_and_ends_with_0() {
    for (String[] arguments : new String[][] {{"--help"}, {"frame", "--help"}}) {
      Run run = run(arguments);
      assertEquals(0, run.exitCode());
      assertEquals("", run.err());
      String example =
          arguments.length == 1
              ? "check bench.yaml"
              : "frame rack.json --results rack-results.json";
      assertTrue(run.out().contains("\nExample: stoutwork " + example + "\n"), run.out());
      assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }
  }

  @Test
  void an_absent_file_is_named_without_a_trace() {
    Run run = run("frame", folder.resolve("absent.json").toString());
    assertEquals(2, run.exitCode());
    assertEquals(
        folder.resolve("absent.json")
            + " the file does not exist; the name of an existing file is needed.",
        flowing(run.err()));
    assertFalse(run.err().contains("Exception"));
  }

  @Test
  void the_same_input_gives_the_same_bytes() {
    assertEquals(
        run("frame", input.toString(), "--results", "-").out(),
        run("frame", input.toString(), "--results", "-").out());
  }

  @Test
  void a_panel_alone_is_solved_with_its_supports() throws IOException {
    // A strip with a free width: w = 5 q L^4 / (384 D), D = E h³ / 12 (1 - ν²), ν = 0.
    Files.writeString(
        input,
        """
        panels:
          shelf:
            {origin: [0, 0, 740], along: [1, 0, 0], across: [0, 1, 0], length: 900, width: 210,
             thickness: 18, E1: 11000, E2: 600, G12: 700, G13: 680, G23: 60, nu12: 0,
             thin: true, report: [[450, 105]],
             supports: [{line: edge=left, w: fixed}, {line: edge=right, w: fixed}]}
        loads: [{type: panel-pressure, panel: shelf, q: 0.0005}]
        """);
    Run run = run("frame", input.toString(), "--results", "-");
    assertEquals(0, run.exitCode(), run.err());
    JsonNode panel = new ObjectMapper().readTree(run.out()).at("/panels/shelf");
    double stiffness = 11000 * Math.pow(18, 3) / 12;
    double sag = 5 * 0.0005 * Math.pow(900, 4) / (384 * stiffness);
    assertEquals(-sag, panel.at("/report/0/w").doubleValue(), 1e-3 * sag);
    assertEquals(0.0005 * 900 * 900 / 8, panel.at("/report/0/Mx").doubleValue(), 0.1);
    assertEquals(0.0005 * 900 * 210 / 2, panel.at("/supports/1/force").doubleValue(), 1e-6);
    assertTrue(panel.get("meshError").doubleValue() < 1e-2);
  }

  @Test
  void one_way_supports_of_a_panel_are_summed_up() throws IOException {
    Files.writeString(
        input,
        """
        panels:
          shelf:
            {origin: [0, 0, 740], along: [1, 0, 0], across: [0, 1, 0], length: 900, width: 600,
             thickness: 18, E1: 11000, E2: 600, G12: 700, G13: 680, G23: 60, nu12: 0.35,
             density_kg_m3: 620, mesh: [12, 8],
             supports: [{line: x=45, w: fixed}, {line: edge=right, w: compression-only}]}
        loads:
          - {type: panel-patch, panel: shelf, at: [300, 20], size: [60, 40], force: 450}
          - {type: self-weight, direction: [0, 0, -1]}
        """);
    JsonNode results =
        new ObjectMapper().readTree(run("frame", input.toString(), "--results", "-").out());
    assertEquals("partly lifted", results.at("/contact/shelf").textValue());
    JsonNode supports = results.at("/panels/shelf/supports");
    double weight = 0.9 * 0.6 * 0.018 * 620 * 9.80665;
    assertEquals(
        450 + weight,
        supports.get(0).get("force").doubleValue() + supports.get(1).get("force").doubleValue(),
        1e-6);
    assertTrue(supports.get(1).get("openLength").doubleValue() > 0);
  }

  @Test
  void every_analysis_asked_for_is_answered() throws IOException {
    Files.writeString(
        input,
        BRACKET.replace("force: [0, 0, -120]", "force: [-9000, 0, -12]")
            + "analyses: [static, second-order, buckling, frequencies]\n");
    JsonNode results =
        new ObjectMapper().readTree(run("frame", input.toString(), "--results", "-").out());
    // Euler: π² E I / (4 L²) over the force, for the weaker axis; L = 910 mm.
    double critical = Math.PI * Math.PI * 12300 * 1.07e6 / (4 * 910 * 910);
    assertEquals(
        critical / 9000, results.at("/bucklingFactors/0").doubleValue(), 1e-3 * critical / 9000);
    double straight = results.at("/displacements/tip/2").doubleValue();
    double bent = results.at("/secondOrder/displacements/tip/2").doubleValue();
    double about = critical * 1.08 / 1.07;
    assertEquals(straight / (1 - 9000 / about), bent, 0.02 * Math.abs(bent));
    assertEquals(5, results.at("/secondOrder/members/bar/internal").size());
    // 1.8751² / (2 π) √(E I / (ρ A L⁴)), mass in tonnes; rotary inertia lowers it a little.
    double mass = 650e-12 * 3600;
    double hertz =
        1.8751 * 1.8751 / (2 * Math.PI) * Math.sqrt(12300 * 1.07e6 / (mass * Math.pow(910, 4)));
    assertEquals(hertz, results.at("/frequenciesHz/0").doubleValue(), 0.005 * hertz);
    assertTrue(
        results.at("/frequenciesHz/1").doubleValue()
            >= results.at("/frequenciesHz/0").doubleValue());
  }

  @Test
  void second_order_results_have_the_keys_of_first_order_ones() throws IOException {
    Files.writeString(
        input,
        BRACKET.replace("loads:", "loads:\n  - {type: node, node: tip, force: [-4000, 25, 0]}")
            + """
              panels:
                shelf:
                  {origin: [610, -100, 758], along: [1, 0, 0], across: [0, 1, 0], length: 300,
                   width: 190, thickness: 18, E1: 11000, E2: 600, G12: 700, G13: 680, G23: 60,
                   nu12: 0.35, density_kg_m3: 620, report: [[40, 30], [280, 170]]}
              ties:
                - {panel: shelf, at: [300, 100], node: tip, ux: rigid, uy: rigid, uz: 900,
                   rx: rigid, ry: 2e7, rz: rigid}
              analyses: [static, second-order]
              """);
    Run run = run("frame", input.toString(), "--results", "-");
    ObjectNode results = (ObjectNode) new ObjectMapper().readTree(run.out());
    JsonNode second = results.remove("secondOrder");
    results.remove(List.of("schemaVersion", "title", "units"));
    assertEquals(keys(results), keys(second));
    JsonNode panel = second.at("/panels/shelf");
    assertEquals(keys(results.at("/panels/shelf")), keys(panel));
    assertEquals(
        results.at("/panels/shelf/report/1/w").doubleValue(),
        panel.at("/report/1/w").doubleValue(),
        0.5);
    assertNotEquals(results.at("/panels/shelf/report/1/w"), panel.at("/report/1/w"));
    assertTrue(run("frame", input.toString()).out().contains("N/mm), second order"));
  }

  private static List<String> keys(JsonNode object) {
    List<String> keys = new ArrayList<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }
}
