package org.stoutwork.report.file.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.report.file.bench.BenchFile;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;

/** The schema of results and what is written must not drift apart. */
class ResultSchemaTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final BenchCheck CHECK = BenchCheck.load();
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(
              ResultWriter.class.getResourceAsStream(
                  "/org/stoutwork/report/file/result.schema.json"));

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static BenchResult check(BenchFile file) {
    return CHECK.with(file.woods()).run(file.bench());
  }

  private static BenchResult first() throws UnreadableFile {
    return check(BenchFileReader.read(Path.of("examples", "first-bench.yaml"), CHECK.woods()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void the_results_of_every_example_follow_the_schema(Path example) throws Exception {
    BenchResult result = check(BenchFileReader.read(example, CHECK.woods()));
    JsonNode tree = MAPPER.readTree(ResultWriter.json(result));
    assertEquals(Set.of(), SCHEMA.validate(tree));
    assertEquals(result.checked().size(), tree.get("checks").size());
    assertEquals(result.notChecked().size(), tree.get("notChecked").size());
    Set<String> keys = new HashSet<>();
    tree.get("checks").forEach(check -> assertTrue(keys.add(check.get("key").textValue())));
    tree.get("notChecked").forEach(check -> assertTrue(keys.add(check.get("key").textValue())));
  }

  @Test
  void numbers_are_those_of_the_result_to_the_last_digit() throws Exception {
    BenchResult result = first();
    JsonNode tree = MAPPER.readTree(ResultWriter.json(result));
    assertEquals("inadequate", tree.get("verdict").textValue());
    for (int i = 0; i < result.checked().size(); i++) {
      CheckResult.Checked check = result.checked().get(i);
      JsonNode written = tree.get("checks").get(i);
      assertEquals(check.key(), written.get("key").textValue());
      assertEquals(check.utilisation(), written.get("utilisation").doubleValue());
      assertEquals(check.demand().value(), written.get("demand").doubleValue());
      assertEquals(check.capacity().value(), written.get("capacity").doubleValue());
      assertEquals(check.range().isPresent(), written.has("range"));
      assertEquals(check.working().lines().size(), written.get("working").size());
    }
    assertEquals(
        result.racking().get(0).stiffness().low(),
        tree.at("/racking/0/stiffness/low").doubleValue());
    assertEquals(result.massKg(), tree.at("/bench/mass").doubleValue());
  }

  @Test
  void a_calculated_line_carries_its_inputs_and_source() throws Exception {
    JsonNode tree = MAPPER.readTree(ResultWriter.json(first()));
    JsonNode sliding = null;
    for (JsonNode check : tree.get("checks")) {
      sliding = check.get("key").textValue().equals("sliding-along") ? check : sliding;
    }
    JsonNode friction = sliding.get("working").get(1);
    assertEquals("calculated", friction.get("kind").textValue());
    assertEquals("μ · W", friction.get("formula").textValue());
    double mu = friction.at("/inputs/0/value").doubleValue();
    double weight = friction.at("/inputs/1/value").doubleValue();
    assertEquals(mu * weight, friction.get("value").doubleValue(), 1e-9);
    assertEquals("N", friction.at("/inputs/1/unit").textValue());
    assertEquals("derived", friction.at("/source/mark").textValue());
    assertEquals(sliding.get("capacity").doubleValue(), friction.get("value").doubleValue());
  }

  @Test
  void the_same_bench_gives_the_same_bytes_in_any_locale() throws Exception {
    String here = ResultWriter.json(first());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here, ResultWriter.json(first()));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void two_actions_of_one_name_are_told_apart() throws Exception {
    String text =
        """
        bench: two sitters
        wood: oak, white
        height: 830 mm
        top: {length: 1710 mm, width: 590 mm, thickness: 62 mm}
        actions:
          - {kind: point on the top, name: somebody, force: 700 N}
          - {kind: point on the top, name: somebody, force: 1400 N}
        """;
    BenchResult result =
        check(BenchFileReader.read(new SourceText("two.yaml", text), CHECK.woods()));
    JsonNode tree = MAPPER.readTree(ResultWriter.json(result));
    assertEquals(Set.of(), SCHEMA.validate(tree));
    BenchResult heavy = check(without(text, "700 N"));
    BenchResult light = check(without(text, "1400 N"));
    assertEquals(demand(light, "top-sag-point"), demand(result, "top-sag-point-2"));
    assertEquals(demand(heavy, "top-sag-point"), demand(result, "top-sag-point"));
    assertTrue(demand(light, "top-sag-point") < 0.6 * demand(heavy, "top-sag-point"));
    assertEquals(demand(heavy, "bending-top-along"), demand(result, "bending-top-along"));
  }

  private static BenchFile without(String text, String force) throws Exception {
    String one = text.replaceFirst(".*force: " + force + ".*\n", "");
    return BenchFileReader.read(new SourceText("one.yaml", one), CHECK.woods());
  }

  private static double demand(BenchResult result, String key) {
    return result.checked().stream()
        .filter(check -> check.key().equals(key))
        .findFirst()
        .orElseThrow()
        .demand()
        .value();
  }

  @Test
  void the_schema_is_a_schema_and_refuses_what_nobody_writes() throws Exception {
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(Set.of(), meta.validate(SCHEMA.getSchemaNode()));
    ObjectNode tree = (ObjectNode) MAPPER.readTree(ResultWriter.json(first()));
    tree.put("unheardOf", 1);
    assertFalse(SCHEMA.validate(tree).isEmpty());
    tree.remove("unheardOf");
    assertEquals(Set.of(), SCHEMA.validate(tree));
    ((ObjectNode) tree.get("checks").get(0)).put("utilisation", "much");
    assertFalse(SCHEMA.validate(tree).isEmpty());
  }
}
