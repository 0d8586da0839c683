package org.stoutwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.study.BenchCheck;

/** The keys that README.md lists are those that the reader knows, part by part. */
class ReadmeKeysTest {

  private static final Pattern KEY = Pattern.compile("`([A-Za-z]+)`");
  private static final String UNKNOWN = "nothingOfTheSort";

  /** Every map of a bench file, each with a key that nobody knows. */
  private static final String ALL_MAPS =
      """
      _: 1
      wood: ash, European
      people: {_: 1}
      air: {_: 1}
      top:
        _: 1
        layers: [{_: 1}]
        hold: {screwed: {_: 1, diameter: 5, spacing: 120}}
        fixing: {_: 1}
        endCap: {_: 1}
        lipping: {_: 1}
        dogHoles: [{_: 1}]
      everyEndFrame:
        _: 1
        legs: {_: 1}
        topRail: {_: 1, joint: {_: 1, stiffness: {_: 1}}}
        bottomRail: {_: 1}
        foot: {_: 1}
      endFrames: [{_: 1}]
      stretchers: [{_: 1}]
      vises: [{_: 1}]
      weights: [{_: 1, stays: {_: 1}}]
      actions: [{_: 1, acts: {_: 1}}]
      woods: [{_: 1}]
      """
          .replace("_:", UNKNOWN + ":");

  /** Headings of the list in README.md, and the maps of the file that they speak of. */
  private static final Map<String, List<String>> HEADINGS =
      Map.ofEntries(
          Map.entry("The file itself", List.of("")),
          Map.entry("`top`", List.of("top.")),
          Map.entry("`top.layers`: a list", List.of("top.layers[0].")),
          Map.entry(
              "`hold.screwed`: of layers, or of a stretcher to the top",
              List.of("top.hold.screwed.")),
          Map.entry("`top.fixing`", List.of("top.fixing.")),
          Map.entry("`top.endCap`", List.of("top.endCap.")),
          Map.entry("`top.dogHoles`: a list of rows along the bench", List.of("top.dogHoles[0].")),
          Map.entry("`top.lipping`", List.of("top.lipping.")),
          Map.entry("`endFrames`: a map if all are alike", List.of("endFrames.")),
          Map.entry("`endFrames`: a list if they differ", List.of("endFrames[0].")),
          Map.entry(
              "`everyEndFrame`: what the frames of such a list share", List.of("everyEndFrame.")),
          Map.entry("`legs`", List.of("everyEndFrame.legs.")),
          Map.entry("`topRail`", List.of("everyEndFrame.topRail.")),
          Map.entry("`bottomRail`", List.of("everyEndFrame.bottomRail.")),
          Map.entry("`foot`", List.of("everyEndFrame.foot.")),
          Map.entry("`stretchers`: a list", List.of("stretchers[0].")),
          Map.entry("`joint`", List.of("everyEndFrame.topRail.joint.")),
          Map.entry("`joint.stiffness`", List.of("everyEndFrame.topRail.joint.stiffness.")),
          Map.entry("`vises`: a list", List.of("vises[0].")),
          Map.entry("`weights`: a list", List.of("weights[0].")),
          Map.entry("`actions`: a list, in place of those of the duty", List.of("actions[0].")),
          Map.entry("`stays` and `acts`", List.of("weights[0].stays.", "actions[0].acts.")),
          Map.entry("`air`", List.of("air.")),
          Map.entry("`woods`: a list", List.of("woods[0].")),
          Map.entry("`people`", List.of("people.")));

  private static String section() throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"));
    int from = readme.indexOf("\n## Keys of a bench file\n");
    assertTrue(from > 0);
    return readme.substring(from);
  }

  /** The keys of each heading, out of the first columns of its table. */
  private static Map<String, Set<String>> listed() throws IOException {
    Map<String, Set<String>> out = new TreeMap<>();
    String heading = "";
    for (String line : section().lines().toList()) {
      if (line.startsWith("### ")) {
        heading = line.substring(4);
        assertEquals(null, out.put(heading, new TreeSet<>()), heading);
      } else if (line.startsWith("| `")) {
        Matcher keys = KEY.matcher(line.substring(0, line.indexOf('|', 2)));
        while (keys.find()) {
          assertTrue(out.get(heading).add(keys.group(1)), line);
        }
      }
    }
    return out;
  }

  /** What the reader says is known beside each key that it does not know. */
  private static void known(String text, Map<String, Set<String>> out) throws IOException {
    UnreadableFile refusal =
        assertThrows(
            UnreadableFile.class,
            () ->
                BenchFileReader.read(
                    new SourceText("bench.yaml", text), BenchCheck.load().woods()));
    for (Fault fault : refusal.faults()) {
      if (fault.keyPath().endsWith(UNKNOWN)) {
        String map = fault.keyPath().substring(0, fault.keyPath().length() - UNKNOWN.length());
        String keys = fault.allowed().substring("known are ".length());
        out.put(map, new TreeSet<>(List.of(keys.split(", ", -1))));
      }
    }
  }

  @Test
  void every_key_of_the_reader_is_listed_and_none_besides() throws IOException {
    Map<String, Set<String>> known = new TreeMap<>();
    known(ALL_MAPS, known);
    known("wood: ash, European\nendFrames: {" + UNKNOWN + ": 1}\n", known);
    Map<String, Set<String>> listed = listed();
    assertEquals(HEADINGS.keySet(), listed.keySet());
    TreeSet<String> spokenOf = new TreeSet<>();
    HEADINGS.forEach(
        (heading, maps) ->
            maps.forEach(
                map -> {
                  spokenOf.add(map);
                  assertEquals(known.get(map), listed.get(heading), heading);
                }));
    assertEquals(known.keySet(), spokenOf);
  }

  @Test
  void the_schema_stands_where_the_list_says() throws IOException {
    String folder = "report/src/main/resources/org/stoutwork/report/file";
    assertTrue(section().contains("`" + folder + "`"));
    assertTrue(Files.exists(Path.of("..", folder, "bench.schema.json")));
  }
}
