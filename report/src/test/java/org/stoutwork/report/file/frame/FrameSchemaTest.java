package org.stoutwork.report.file.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.report.file.frame.BrokenFrame.Refusal;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

/** The schema and the reader must not drift apart. */
class FrameSchemaTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path REFERENCE =
      Path.of("..", "tests-reference", "src", "test", "resources", "org", "stoutwork", "reference");

  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(
              FrameFile.class.getResourceAsStream("/org/stoutwork/report/file/frame.schema.json"));

  private static Set<ValidationMessage> complaints(String json) throws JsonProcessingException {
    return SCHEMA.validate(MAPPER.readTree(json));
  }

  static List<Path> referenceFiles() throws IOException {
    try (Stream<Path> frames = Files.list(REFERENCE.resolve("frames"));
        Stream<Path> eigen = Files.list(REFERENCE.resolve("eigen"))) {
      return Stream.concat(frames, eigen)
          .filter(path -> path.toString().endsWith(".json"))
          .sorted()
          .toList();
    }
  }

  static Stream<BrokenFrame> broken() {
    return FrameFileReaderTest.broken();
  }

  @Test
  void there_are_as_many_reference_files_as_there_should_be() throws IOException {
    assertEquals(49, referenceFiles().size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("referenceFiles")
  void schema_and_reader_take_every_reference_file(Path path) throws IOException, UnreadableFile {
    assertEquals(Set.of(), complaints(Files.readString(path)));
    FrameFile file = FrameFileReader.read(path).value();
    JsonNode tree = MAPPER.readTree(Files.readString(path));
    assertEquals(tree.get("nodes").size(), file.model().nodes().size());
    assertEquals(tree.get("members").size(), file.model().members().size());
    assertEquals(tree.get("loads").size(), file.loads().loads().size());
    assertEquals(tree.get("analyses").size(), file.analyses().size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void schema_and_reader_agree_on_broken_files(BrokenFrame broken) throws JsonProcessingException {
    if (broken.refusal() == Refusal.BOTH) {
      assertFalse(complaints(broken.text()).isEmpty());
    } else if (broken.refusal() == Refusal.READER_ONLY) {
      assertEquals(Set.of(), complaints(broken.text()));
    } else if (!broken.wrong().contains("1e999")) {
      assertThrows(JsonProcessingException.class, () -> MAPPER.readTree(broken.text()));
    }
  }

  @Test
  void the_schema_takes_the_right_file_and_what_the_writer_writes() throws Exception {
    String text = BrokenFrame.rightText();
    assertEquals(Set.of(), complaints(text));
    FrameFile file = FrameFileReader.read(new SourceText("rack.json", text)).value();
    assertEquals(Set.of(), complaints(FrameWriter.json(file)));
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
