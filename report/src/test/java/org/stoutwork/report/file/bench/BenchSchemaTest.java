package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.bench.sketch.NutKind;
import org.stoutwork.bench.sketch.WeightKind;
import org.stoutwork.fastener.BoltClass;
import org.stoutwork.fastener.HoleFit;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.report.file.bench.BrokenBench.Refusal;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.time.DurationClass;

/** The schema and the reader must not drift apart. */
class BenchSchemaTest {

  private static final ObjectMapper YAML = new YAMLMapper();
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(
              BenchFile.class.getResourceAsStream("/org/stoutwork/report/file/bench.schema.json"));

  private static Set<ValidationMessage> complaints(String text) throws JsonProcessingException {
    return SCHEMA.validate(YAML.readTree(text));
  }

  static List<Path> examples() throws IOException {
    return ExampleFilesTest.examples();
  }

  static Stream<BrokenBench> broken() {
    return BrokenBench.all().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void the_schema_takes_every_example(Path file) throws IOException {
    assertEquals(Set.of(), complaints(Files.readString(file)));
  }

  @Test
  void schema_and_reader_take_the_sound_files() throws JsonProcessingException, UnreadableFile {
    for (String sound : List.of(BrokenBench.SOUND, BrokenBench.LISTED)) {
      assertEquals(Set.of(), complaints(sound));
      BenchFile read =
          BenchFileReader.read(new SourceText("bench.yaml", sound), ExampleFilesTest.WOODS);
      assertTrue(read.bench().endFrames().size() >= 2);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void schema_and_reader_agree_on_broken_files(BrokenBench broken) throws JsonProcessingException {
    if (broken.refusal() == Refusal.BOTH) {
      assertFalse(complaints(broken.text()).isEmpty());
    } else if (broken.refusal() == Refusal.READER_ONLY) {
      assertEquals(Set.of(), complaints(broken.text()));
    } else {
      assertThrows(JsonProcessingException.class, () -> YAML.readTree(broken.text()));
    }
  }

  @Test
  void the_schema_lists_the_words_of_the_trade_that_the_reader_knows() {
    assertEquals(words("/properties/duty/enum"), all(Duty.values(), Duty::words));
    assertEquals(words("/properties/footing/enum"), all(Footing.values(), Footing::words));
    assertEquals(words("/properties/basis/enum"), all(BasisChoice.values(), BasisChoice::words));
    assertEquals(words("/properties/glue/enum"), all(GlueKind.values(), GlueKind::words));
    assertEquals(
        words("/$defs/top/properties/lipping/properties/edges/enum"),
        all(Lipping.Edges.values(), Lipping.Edges::words));
    assertEquals(
        words("/$defs/top/properties/fixing/properties/screw/enum"),
        all(FixingScrew.values(), FixingScrew::words));
    assertEquals(
        words("/$defs/top/properties/fixing/properties/heldAt/enum"),
        all(TopHeld.values(), TopHeld::words));
    assertEquals(
        words("/$defs/action/properties/kind/enum"), all(ActionKind.values(), ActionKind::words));
    assertEquals(
        words("/$defs/action/properties/duration/enum"),
        all(DurationClass.values(), DurationClass::words));
    assertEquals(
        words("/$defs/weight/properties/lies/enum"), all(WeightKind.values(), WeightKind::words));
    String joint = "/$defs/joint/anyOf/1/properties/";
    assertEquals(words(joint + "kind/enum"), all(JointKind.values(), JointKind::words));
    assertEquals(words(joint + "hold/enum"), all(JointHold.values(), JointHold::words));
    assertEquals(words(joint + "boltHole/enum"), all(HoleFit.values(), HoleFit::words));
    assertEquals(words(joint + "boltClass/enum"), all(BoltClass.values(), BoltClass::words));
    assertEquals(words(joint + "nut/enum"), all(NutKind.values(), NutKind::words));
    assertEquals(
        words("/properties/air/properties/climate/enum"),
        all(Climate.presets().toArray(new Climate[0]), Climate::key));
  }

  private static Set<String> words(String pointer) {
    JsonNode list = SCHEMA.getSchemaNode().at(pointer);
    assertTrue(list.isArray(), pointer);
    Set<String> words = new TreeSet<>();
    list.forEach(word -> words.add(word.asText()));
    return words;
  }

  private static <T> Set<String> all(T[] values, Function<T, String> words) {
    return new TreeSet<>(Arrays.stream(values).map(words).toList());
  }

  @Test
  void the_schema_itself_is_a_schema() {
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(Set.of(), meta.validate(SCHEMA.getSchemaNode()));
    assertTrue(SCHEMA.getSchemaNode().has("$defs"));
  }
}
