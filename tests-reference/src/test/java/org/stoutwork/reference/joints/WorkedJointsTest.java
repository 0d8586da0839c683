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
import org.stoutwork.joint.regression.TestSeries;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.working.Pad;

/**
 * Every worked figure of joints, fasteners, members, tops and frames. The figures come from a
 * script written apart from the product; each row names the document of its formula.
 */
class WorkedJointsTest {

  private static final double CLOSE = 1e-3;

  /** Lower values of tests are given in whole N·m, by a method that their paper does not print. */
  private static final double PUBLISHED = 0.01;

  private static Map<String, Consumer<Worked>> blocks() {
    Map<String, Consumer<Worked>> all = new HashMap<>(TenonBlocks.all());
    all.putAll(FastenerBlocks.all());
    all.putAll(PegBlocks.all());
    all.putAll(MemberBlocks.all());
    all.putAll(TopBlocks.all());
    all.putAll(FrameBlocks.all());
    all.put("published", WorkedJointsTest::published);
    return all;
  }

  private static List<Map<String, String>> rows() {
    return CsvRows.of("/joints/joints-worked.csv");
  }

  /** {@code 1.2-mtMoment-A:J_O} speaks of block {@code mtMoment}; anchors keep their own name. */
  private static String block(String id) {
    return id.substring(0, id.indexOf(':')).split("-", -1)[id.contains("-anchor-") ? 2 : 1];
  }

  /** Oak joints that were tested: their means, and the lower value for so many tests. */
  private static void published(Worked w) {
    TestSeries series =
        Stream.of(TestSeries.RED_OAK, TestSeries.WHITE_OAK)
            .filter(s -> s.count() == w.in("n"))
            .findFirst()
            .orElseThrow();
    w.put("M_mean", series.mean()).put("M", series.lower(Pad.blank(), oneSided(series.count())));
  }

  /**
   * Standard deviations from the mean of n tests of a normal population to the value that 95 % of
   * it exceed with 95 % confidence; the usual close estimate of the tables.
   */
  private static double oneSided(double n) {
    double z2 = Variability.Z_5 * Variability.Z_5;
    double a = 1 - z2 / (2 * (n - 1));
    double b = z2 - z2 / n;
    return (Variability.Z_5 + Math.sqrt(z2 - a * b)) / a;
  }

  @Test
  void every_row_of_the_file_is_calculated_by_someone() {
    Set<String> nobodys = new TreeSet<>();
    Map<String, Worked> done = new HashMap<>();
    for (Map<String, String> row : rows()) {
      String id = row.get("id");
      Consumer<Worked> block = blocks().get(block(id));
      if (block == null || found(row, blocks(), done) == null) {
        nobodys.add(id);
      }
    }
    assertTrue(nobodys.isEmpty(), "no one calculates " + nobodys);
    assertEquals(563, rows().size());
  }

  @TestFactory
  Stream<DynamicTest> worked_figures_come_out_of_the_product() {
    Map<String, Consumer<Worked>> blocks = blocks();
    Map<String, Worked> done = new HashMap<>();
    return rows().stream().map(row -> dynamicTest(row.get("id"), () -> compare(row, blocks, done)));
  }

  /** What the product makes of a row; null if no one calculates it. */
  private static Object found(
      Map<String, String> row, Map<String, Consumer<Worked>> blocks, Map<String, Worked> done) {
    String id = row.get("id");
    String set = id.substring(0, id.indexOf(':'));
    Worked worked = done.computeIfAbsent(set, key -> calculate(row, blocks.get(block(id))));
    return worked.found().get(id.substring(id.indexOf(':') + 1));
  }

  private static void compare(
      Map<String, String> row, Map<String, Consumer<Worked>> blocks, Map<String, Worked> done) {
    String id = row.get("id");
    Object found = found(row, blocks, done);
    if (found == null) {
      fail("nothing calculates " + id);
    }
    if (found instanceof String word) {
      assertEquals(row.get("expected"), word, id);
      return;
    }
    double expected = Double.parseDouble(row.get("expected"));
    assertEquals(expected, (double) found, within(row, expected), id + ", " + row.get("source"));
  }

  private static double within(Map<String, String> row, double expected) {
    return switch (row.get("tolerance")) {
      case "1 absolute" -> 1;
      case "published value" -> PUBLISHED * expected;
      default -> CLOSE * Math.abs(expected);
    };
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
