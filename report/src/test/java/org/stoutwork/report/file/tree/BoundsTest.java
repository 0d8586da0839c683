package org.stoutwork.report.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hostile and unsuitable files are refused quickly and in plain words. */
class BoundsTest {

  private static final Duration QUICKLY = Duration.ofSeconds(10);

  @TempDir private Path folder;

  private String refusal(byte[] content) throws IOException {
    Path file = Files.write(folder.resolve("bench.yaml"), content);
    return refusal(file);
  }

  private String refusal(Path file) {
    UnreadableFile thrown =
        assertTimeoutPreemptively(
            QUICKLY,
            () -> assertThrows(UnreadableFile.class, () -> TreeReader.read(file, Limits.STANDARD)));
    return thrown.getMessage().replace(folder.toString() + "/", "");
  }

  @Test
  void a_file_of_fifty_megabytes_is_refused_by_its_size() throws IOException {
    Path file = folder.resolve("large.yaml");
    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength(50_000_000);
    }
    assertEquals(
        "large.yaml  the file has 50 000 000 bytes; a file of at most 1 000 000 bytes is read.",
        refusal(file));
  }

  @Test
  void a_text_in_memory_is_bounded_as_well() {
    byte[] bytes = new byte[1_000_001];
    UnreadableFile thrown =
        assertThrows(
            UnreadableFile.class, () -> SourceReader.decode("large.yaml", bytes, Limits.STANDARD));
    assertEquals(
        "large.yaml  the file has more than 1 000 000 bytes; a file of at most 1 000 000 bytes is"
            + " read.",
        thrown.getMessage());
  }

  @Test
  void an_alias_bomb_stays_small() throws IOException {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 20; i++) {
      String alias = "*a" + (i - 1);
      bomb.append("a" + i + ": &a" + i + " [");
      bomb.append(String.join(", ", Collections.nCopies(10, alias))).append("]\n");
    }
    String message = refusal(bomb.toString().getBytes(StandardCharsets.UTF_8));
    assertTrue(
        message.startsWith(
            "bench.yaml:1:5  a0 carries an anchor (&); write values out; anchors are not read.\n"
                + "bench.yaml:2:5  a1 carries an anchor (&); write values out; anchors are not"
                + " read.\n"
                + "bench.yaml:2:10  a1[0] is an alias (*); write the value out; aliases are not"
                + " read.\n"),
        message);
    assertTrue(message.endsWith("\nand 10 more mistakes of this sort"), message);
  }

  @Test
  void five_thousand_levels_are_refused() throws IOException {
    String text = "a: " + "{b: ".repeat(5000) + "1" + "}".repeat(5000);
    String message = refusal(text.getBytes(StandardCharsets.UTF_8));
    assertTrue(message.contains("is nested too deeply; at most 32 levels of maps and lists"));
    assertTrue(message.length() < 200, message);
  }

  @Test
  void a_megabyte_of_mistakes_gives_a_bounded_message() throws IOException {
    String text = "a: 1\n".repeat(199_000);
    String message = refusal(text.getBytes(StandardCharsets.UTF_8));
    assertEquals(Faults.MOST + 1, message.lines().count());
    assertTrue(message.endsWith("and 198799 more mistakes of this sort"), message);
  }

  @Test
  void a_long_key_over_many_values_stays_within_memory() throws Exception {
    String text = "{? \"" + "k".repeat(400_000) + "\" : [" + "1,".repeat(200_000) + "1]}";
    Path file = Files.writeString(folder.resolve("bench.yaml"), text);
    MapNode node =
        (MapNode) assertTimeoutPreemptively(QUICKLY, () -> TreeReader.read(file, Limits.STANDARD));
    ListNode list = (ListNode) node.entries().get(0).value();
    assertEquals(200_001, list.items().size());
    assertTrue(list.items().get(7).path().text().length() < 120);
  }

  @Test
  void binary_data_are_refused() throws IOException {
    assertEquals(
        "bench.yaml  the file holds binary data; a text file in UTF-8 is needed.",
        refusal(new byte[] {0x50, 0x4B, 3, 4, 0, 0, 1}));
  }

  @Test
  void a_byte_that_is_not_utf_8_is_named_with_its_place() throws IOException {
    byte[] latin = "top: 1500 mm\nname: café\n".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        "bench.yaml:2:10  the byte 0xE9 is not UTF-8; save the file again as UTF-8.",
        refusal(latin));
  }

  @Test
  void a_cut_off_character_at_the_end_is_refused() throws IOException {
    assertEquals(
        "bench.yaml:1:10  the byte 0xC3 is not UTF-8; save the file again as UTF-8.",
        refusal(new byte[] {'n', 'a', 'm', 'e', ':', ' ', 'c', 'a', 'f', (byte) 0xC3}));
  }

  @Test
  void utf_16_is_named() throws IOException {
    assertEquals(
        "bench.yaml  the file is UTF-16 text; UTF-8 is needed: save the file again as UTF-8.",
        refusal("name: low".getBytes(StandardCharsets.UTF_16)));
  }

  @Test
  void a_byte_order_mark_of_utf_8_does_no_harm() throws Exception {
    Path file = Files.writeString(folder.resolve("bench.yaml"), "\uFEFFname: low\n");
    assertEquals("name", ((MapNode) TreeReader.read(file, Limits.STANDARD)).entries().get(0).key());
  }

  @Test
  void a_directory_and_an_absent_file_are_named() {
    Path absent = folder.resolve("absent.yaml");
    assertEquals(
        "absent.yaml  the file does not exist; the name of an existing file is needed.",
        refusal(absent));
    assertEquals(
        folder + "  the file is a directory; the name of a file is needed.", refusal(folder));
  }
}
