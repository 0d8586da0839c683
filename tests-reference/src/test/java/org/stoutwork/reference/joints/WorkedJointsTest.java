package org.stoutwork.reference.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every worked figure of joints and fasteners. The figures come from a script written apart from
 * the product; each row names the document of its formula.
 */
class WorkedJointsTest {

  private static final double CLOSE = 1e-3;

  /**
   * Blocks of members, tops and frames: they are no joints and are checked with their own rooms.
   */
  private static final Set<String> OF_OTHER_ROOMS =
      Set.of(
          "bendingShear",
          "ec5Kc",
          "ndsCp",
          "combined",
          "ltb",
          "deflectionCreep",
          "astmAllowable",
          "gammaTwoLayer",
          "gammaScrewLoad",
          "gluedComposite",
          "dogHoles",
          "portalOneRail",
          "portalRigid",
          "hFrameTwoRails",
          "swaySecondOrder");

  private static Map<String, Consumer<Worked>> blocks() {
    Map<String, Consumer<Worked>> all = new HashMap<>(TenonBlocks.all());
    all.putAll(FastenerBlocks.all());
    all.putAll(PegBlocks.all());
    return all;
  }

  private static List<Map<String, String>> rows() {
    return CsvRows.of("/joints/joints-worked.csv");
  }

  /** {@code 1.2-mtMoment-A:J_O} speaks of block {@code mtMoment}; anchors keep their own name. */
  private static String block(String id) {
    return id.substring(0, id.indexOf(':')).split("-", -1)[id.contains("-anchor-") ? 2 : 1];
  }

  @Test
  void every_block_of_the_file_is_either_calculated_here_or_named_as_another_rooms() {
    Set<String> open = new TreeSet<>();
    Set<String> known = blocks().keySet();
    for (Map<String, String> row : rows()) {
      String block = block(row.get("id"));
      if (!row.get("id").contains("-published-")
          && !known.contains(block)
          && !OF_OTHER_ROOMS.contains(block)) {
        open.add(block);
      }
    }
    assertTrue(open.isEmpty(), "no one calculates " + open);
    assertEquals(563, rows().size());
  }

  @TestFactory
  Stream<DynamicTest> worked_figures_come_out_of_the_product() {
    Map<String, Consumer<Worked>> blocks = blocks();
    Map<String, Worked> done = new HashMap<>();
    return rows().stream()
        .filter(row -> blocks.containsKey(block(row.get("id"))))
        .filter(row -> !row.get("id").contains("-published-"))
        .map(row -> dynamicTest(row.get("id"), () -> compare(row, blocks, done)));
  }

  private static void compare(
      Map<String, String> row, Map<String, Consumer<Worked>> blocks, Map<String, Worked> done) {
    String id = row.get("id");
    String set = id.substring(0, id.indexOf(':'));
    Worked worked = done.computeIfAbsent(set, key -> calculate(row, blocks.get(block(id))));
    Object found = worked.found().get(id.substring(id.indexOf(':') + 1));
    if (found == null) {
      fail("nothing calculates " + id);
    }
    if (found instanceof String word) {
      assertEquals(row.get("expected"), word, id);
      return;
    }
    double expected = Double.parseDouble(row.get("expected"));
    double within = row.get("tolerance").startsWith("1 absolute") ? 1 : CLOSE * Math.abs(expected);
    assertEquals(expected, (double) found, within, id + ", " + row.get("source"));
  }

  private static Worked calculate(Map<String, String> row, Consumer<Worked> block) {
    Map<String, String> inputs = new HashMap<>();
    for (String pair : row.get("inputs").split(";", -1)) {
      String[] parts = pair.split("=", 2);
      inputs.put(parts[0], parts[1]);
    }
    Worked worked = new Worked(inputs, new LinkedHashMap<>());
    block.accept(worked);
    return worked;
  }
}
