package org.stoutwork.report.file.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.report.command.Console;
import org.stoutwork.report.command.ExitCode;
import org.stoutwork.report.command.Stoutwork;
import org.stoutwork.report.file.bench.BenchFile;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.study.Examination;
import org.stoutwork.study.GoverningModel;
import org.stoutwork.working.Line;

/** What {@code frame} finds in a model must be what the check read. */
class ModelFileTest {

  private static final BenchCheck CHECK = BenchCheck.load();

  @TempDir private Path folder;

  private static Examination examine(String name) throws Exception {
    BenchFile file = BenchFileReader.read(Path.of("examples", name + ".yaml"), CHECK.woods());
    return CHECK.with(file.woods()).examine(file.bench());
  }

  /** Writes a model, solves it from the file alone, and gives the results. */
  private JsonNode solved(GoverningModel model) throws Exception {
    Path file = folder.resolve(model.check().key() + ".json");
    Files.writeString(file, ModelFile.json("bench", model));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int code = Stoutwork.run(console, "frame", file.toString(), "--results", "-");
    assertEquals(ExitCode.DONE, code, err.toString(StandardCharsets.UTF_8));
    return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
  }

  private static double read(JsonNode results, GoverningModel model) {
    double sum = 0;
    for (GoverningCase.Term term : model.terms()) {
      JsonNode moved = results.get("displacements").get(term.node());
      sum += term.factor() * moved.get(term.direction().index()).doubleValue();
    }
    return sum;
  }

  private static double given(CheckResult.Checked check, String symbol) {
    return check.working().lines().stream()
        .filter(Line.Given.class::isInstance)
        .map(Line.Given.class::cast)
        .filter(line -> line.symbol().symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** Where a foot lifts, the weight acts with the thrust and the words say what it moves, mm. */
  private static double byWeight(String quantity) {
    Matcher said = Pattern.compile("acts, (.*) mm of it by the weight alone").matcher(quantity);
    return said.find() ? Double.parseDouble(said.group(1).replace('\u2212', '-')) : 0;
  }

  @ParameterizedTest
  @ValueSource(strings = {"class-bench", "planer-bench", "first-bench"})
  void sags_and_sways_of_the_file_are_those_of_the_checks(String name) throws Exception {
    Examination examination = examine(name);
    Set<String> seen = new TreeSet<>();
    for (CheckResult.Checked check : examination.result().checked()) {
      if (!check.key().matches("(top-sag|top-level|top-flatness|sway-).*")) {
        continue;
      }
      GoverningModel model = examination.model(check).orElseThrow();
      double expected = given(check, check.key().startsWith("sway-") ? "δ_1" : "w_{grid}");
      double byWeight = byWeight(model.quantity());
      assertEquals(
          expected, model.value() - byWeight, 1e-12 * expected + 5e-3 * Math.abs(byWeight));
      assertEquals(model.value(), read(solved(model), model), 1e-9 * expected, check.key());
      seen.add(check.key());
    }
    assertTrue(seen.containsAll(Set.of("sway-along", "sway-across", "top-sag-point")), "" + seen);
    assertTrue(seen.contains("top-sag-point-long-term"), "" + seen);
  }

  @ParameterizedTest
  @ValueSource(strings = {"class-bench", "planer-bench"})
  void moments_in_the_file_are_those_of_the_strength_checks(String name) throws Exception {
    Examination examination = examine(name);
    int compared = 0;
    for (CheckResult.Checked check : examination.result().checked()) {
      if (check.key().matches("bending-.*-rail") && compared < 4) {
        GoverningModel model = examination.model(check).orElseThrow();
        double moment = given(check, "M_y");
        assertTrue(isFound(moment, solved(model), check.part()), check.key());
        compared++;
      }
    }
    assertEquals(4, compared);
  }

  /** Whether some end of some piece of a part carries a moment. */
  private static boolean isFound(double moment, JsonNode results, String part) {
    boolean found = false;
    for (var member : results.get("members").properties()) {
      if (member.getKey().startsWith(part)) {
        JsonNode internal = member.getValue().get("internal");
        for (int end : new int[] {0, internal.size() - 1}) {
          double at = internal.get(end).get("forces").get(4).doubleValue();
          found |= Math.abs(at - moment) <= 1e-9 * Math.abs(moment);
        }
      }
    }
    return found;
  }
}
