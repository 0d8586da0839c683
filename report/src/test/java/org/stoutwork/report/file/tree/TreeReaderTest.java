package org.stoutwork.report.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.file.tree.ScalarNode.Style;

class TreeReaderTest {

  private static MapNode read(String text) throws UnreadableFile {
    return assertInstanceOf(
        MapNode.class, TreeReader.read(new SourceText("bench.yaml", text), Limits.STANDARD));
  }

  private static Node value(MapNode map, String key) {
    return map.entry(key).orElseThrow().value();
  }

  private static List<String> scalars(Node node) {
    List<String> found = new ArrayList<>();
    collect(node, found);
    return found;
  }

  private static void collect(Node node, List<String> found) {
    if (node instanceof MapNode map) {
      map.entries().forEach(entry -> collect(entry.value(), found));
    } else if (node instanceof ListNode list) {
      list.items().forEach(item -> collect(item, found));
    } else if (node instanceof ScalarNode scalar) {
      found.add(
          scalar.spot().line()
              + ":"
              + scalar.spot().column()
              + " "
              + scalar.path()
              + " "
              + scalar.style()
              + " "
              + scalar.text());
    }
  }

  @Test
  void every_value_knows_line_column_and_path() throws UnreadableFile {
    MapNode root =
        read(
            """
            top: 1500 mm
            endFrames:
              - legs: {width: 70 mm, count: 2}
              - legs:
                  width: "2 3/4 in"
                  wedged: yes
                  note:
            """);
    assertEquals(
        List.of(
            "1:6 top WORD 1500 mm",
            "3:19 endFrames[0].legs.width WORD 70 mm",
            "3:33 endFrames[0].legs.count NUMBER 2",
            "5:14 endFrames[1].legs.width QUOTED 2 3/4 in",
            "6:15 endFrames[1].legs.wedged TRUTH yes",
            "7:12 endFrames[1].legs.note EMPTY "),
        scalars(root));
    assertEquals(new Spot("bench.yaml", 2, 1), root.entry("endFrames").orElseThrow().spot());
  }

  @Test
  void columns_count_characters_and_lines_count_every_break() throws UnreadableFile {
    MapNode root = read("😀: x\r\n\"é😀\": [1,\r\n 2]\r\n");
    assertEquals(
        List.of("1:4 \"😀\" WORD x", "2:8 \"é😀\"[0] NUMBER 1", "3:2 \"é😀\"[1] NUMBER 2"),
        scalars(root));
  }

  @Test
  void a_key_with_a_dot_is_quoted_in_its_path() throws UnreadableFile {
    assertEquals(
        "\"rail.low\".depth",
        ((MapNode) value(read("rail.low: {depth: 90 mm}"), "rail.low"))
            .entries()
            .get(0)
            .value()
            .path()
            .text());
  }

  @Test
  void json_with_tabs_and_slash_escapes_is_read_and_columns_stay_true() throws UnreadableFile {
    MapNode root = read("{\n\t\"a\": \"N\\/mm\\/\",\t\"b\": [\"\\u00e9\", 3]\n}");
    assertEquals(
        List.of("2:7 a QUOTED N/mm/", "2:24 b[0] QUOTED é", "2:34 b[1] NUMBER 3"), scalars(root));
  }

  @Test
  void a_quote_or_hash_inside_a_plain_value_opens_nothing() throws UnreadableFile {
    MapNode root = read("{a: it's 2\" # a \"comment\n\t, b: #x\n\t'c # d'\t}");
    assertEquals(List.of("1:5 a WORD it's 2\"", "3:2 b QUOTED c # d"), scalars(root));
  }

  @Test
  void a_block_of_lines_is_text() throws UnreadableFile {
    ScalarNode note = (ScalarNode) value(read("note: |\n  120\n  lines\n"), "note");
    assertEquals(Style.QUOTED, note.style());
    assertEquals("120\nlines\n", note.text());
  }

  @Test
  void a_pair_of_escapes_makes_one_character() throws UnreadableFile {
    assertEquals(List.of("1:4 a QUOTED 😀"), scalars(read("a: \"\\ud83d\\ude00\"")));
  }
}
