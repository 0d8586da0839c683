package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.report.command.Console;
import org.stoutwork.report.command.Stoutwork;

/**
 * The reference frames, read from their files and answered as JSON by the command: what the file
 * format says about axes, signs, springs and places is checked together with the solver. Sources
 * stand in each file under {@code expected.sources}; differences are relative to the largest value
 * of the same kind in the file, as {@code rel_tolerance} is defined.
 */
class FramesByCommandTest {

  private static final Path FRAMES =
      Path.of("src", "test", "resources", "org", "stoutwork", "reference", "frames");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static List<Path> frames() throws IOException {
    try (Stream<Path> all = Files.list(FRAMES)) {
      return all.filter(path -> path.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static JsonNode results(Path frame) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int exitCode = Stoutwork.run(console, "frame", frame.toString(), "--results", "-");
    assertEquals(0, exitCode, err.toString(StandardCharsets.UTF_8));
    return MAPPER.readTree(out.toString(StandardCharsets.UTF_8));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("frames")
  void the_command_answers_as_the_references_do(Path frame) throws IOException {
    JsonNode file = MAPPER.readTree(Files.readString(frame));
    JsonNode expected = file.get("expected");
    JsonNode results = results(frame);
    if (expected.has("displacements")) {
      boolean secondOrder = file.get("analyses").toString().equals("[\"second-order\"]");
      statics(expected, secondOrder ? results.get("secondOrder") : results);
    }
    if (expected.has("contact")) {
      assertEquals(expected.get("contact"), results.get("contact"));
    }
    if (expected.has("buckling_factor")) {
      relative(
          expected.get("buckling_factor"),
          results.at("/bucklingFactors/0"),
          expected.get("buckling_tolerance").doubleValue());
    }
    if (expected.has("frequencies_hz")) {
      for (int i = 0; i < expected.get("frequencies_hz").size(); i++) {
        relative(
            expected.get("frequencies_hz").get(i),
            results.get("frequenciesHz").get(i),
            expected.get("frequency_tolerance").doubleValue());
      }
    }
  }

  private static void relative(JsonNode expected, JsonNode found, double tolerance) {
    double value = expected.doubleValue();
    assertEquals(value, found.doubleValue(), tolerance * Math.abs(value));
  }

  private static void statics(JsonNode expected, JsonNode found) {
    double tolerance = expected.get("rel_tolerance").doubleValue();
    List<JsonNode> moved = values(expected.get("displacements"));
    double shift = largest(moved, 0);
    double turn = Math.max(largest(moved, 3), shift / 1000);
    compare(expected.get("displacements"), found.get("displacements"), shift, turn, tolerance);

    List<JsonNode> forces = values(expected.get("reactions"));
    JsonNode members = expected.get("member_end_forces");
    members.forEach(member -> forces.addAll(values(member)));
    double force = largest(forces, 0);
    double moment = Math.max(largest(forces, 3), force);
    compare(expected.get("reactions"), found.get("reactions"), force, moment, tolerance);
    members
        .properties()
        .forEach(
            member ->
                compare(
                    member.getValue(),
                    found.get("members").get(member.getKey()),
                    force,
                    moment,
                    tolerance));
    if (expected.has("member_internal_forces")) {
      expected
          .get("member_internal_forces")
          .properties()
          .forEach(
              member ->
                  quarters(
                      member.getValue(),
                      found.get("members").get(member.getKey()).get("internal"),
                      force,
                      moment,
                      tolerance));
    }
  }

  private static void quarters(
      JsonNode expected, JsonNode internal, double force, double moment, double tolerance) {
    assertEquals(5, internal.size());
    for (int i = 0; i < 3; i++) {
      JsonNode at = internal.get(i + 1);
      double x = expected.get("x").get(i).doubleValue();
      assertEquals(x, at.get("x").doubleValue(), 1e-6 * x);
      six(expected.get("values").get(i), at.get("forces"), force, moment, tolerance);
    }
  }

  private static void compare(
      JsonNode expected, JsonNode found, double first, double second, double tolerance) {
    assertTrue(expected.size() > 0);
    expected
        .properties()
        .forEach(e -> six(e.getValue(), found.get(e.getKey()), first, second, tolerance));
  }

  private static void six(
      JsonNode expected, JsonNode found, double first, double second, double tolerance) {
    assertEquals(6, found.size());
    for (int i = 0; i < 6; i++) {
      assertEquals(
          expected.get(i).doubleValue(),
          found.get(i).doubleValue(),
          tolerance * (i < 3 ? first : second));
    }
  }

  private static List<JsonNode> values(JsonNode map) {
    List<JsonNode> values = new ArrayList<>();
    map.forEach(values::add);
    return values;
  }

  /** Largest size among three of the six values of each row. */
  private static double largest(List<JsonNode> rows, int from) {
    double largest = 0;
    for (JsonNode row : rows) {
      for (int i = from; i < from + 3; i++) {
        largest = Math.max(largest, Math.abs(row.get(i).doubleValue()));
      }
    }
    return largest;
  }
}
