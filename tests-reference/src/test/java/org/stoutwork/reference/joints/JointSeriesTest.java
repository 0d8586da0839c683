package org.stoutwork.reference.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Joints against test series of others, {@code joints/joint-series.csv}, at mean level. What the
 * table of joints in DEVELOPERS.md says of bias and scatter is what this test finds, to the last
 * digit written there; a change of the product that moves a figure must be looked at and written
 * down.
 *
 * <p>What it does not show: apart from the oak joints, to which the factor 0.9 was calibrated, no
 * paper could be read that gives a mean moment of glued tenons together with all sizes. The rest
 * are ratios in which sizes drop out, stresses that need no sizes, and one corner whose sizes are
 * assumed. Most were read in abstracts; the column {@code place} says which.
 *
 * <p>Where predicted over measured lies outside 0.7 to 1.3:
 *
 * <ul>
 *   <li>Window corner, 3.4: of glue alone 2048 N·m, six times what was measured. The tongues, two
 *       of 13 mm, shear along their grain within the joint at 1171 N·m, break at their root at 1740
 *       and split beside the glue at 1784, so limits on the wood beside the glue explain a third of
 *       the distance (on a logarithmic scale) and no more. That the corner held alike opened and
 *       closed speaks for shear or glue, which do not know the sense, and against a split that only
 *       an opening moment makes. What is left lies in the sizes that were not read: faces of 43 mm
 *       instead of 78, as a rebated profile may leave, would give the measured moment by glue and
 *       by shear alike.
 *   <li>Alder over beech, 0.56: the alder joints held 0.95 of the beech ones, 1.8 times what shear
 *       strength lets expect. What broke was not read, the sizes neither. Teak over beech, 1.32:
 *       the paper lays the low value of teak to its poor gluing. The product lowers lines on woods
 *       that bond with difficulty to three quarters, which it took from this row; here the wood
 *       alone is predicted, so that the row stays evidence.
 *   <li>Dowels drawn out: the wood around them was not read and is taken as beech, so the
 *       prediction is one number, and the scatter is that of moisture, grooves and wetting of the
 *       glue, which the product does not ask for. The two lowest are a dipped pre-glued dowel and a
 *       plain one in damp air. The regression lies above all but the best.
 *   <li>Chestnut, PVAc and polyurethane, 2.4: those lines held less than half of what a urea glue
 *       held in the same wood (deviations 0.7 and 0.5 of the mean), so the glue was the weaker, not
 *       the wood; the product takes the wood.
 *   <li>Round tenons, 4 over 2 in: stiffness of similar bodies grows with the cube of size; the
 *       tested grew with the power 2.5.
 * </ul>
 */
class JointSeriesTest {

  private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
  private static final Set<String> ROLES =
      Set.of("calibration", "evidence", "divisor", "not predicted");

  private final Map<String, SeriesRow> rows =
      CsvRows.of("/joints/joint-series.csv").stream()
          .map(SeriesRow::new)
          .collect(
              Collectors.toMap(
                  row -> row.in("id"),
                  Function.identity(),
                  (a, b) -> {
                    throw new IllegalStateException("twice: " + a.in("id"));
                  },
                  LinkedHashMap::new));

  private Stream<SeriesRow> of(String role) {
    return rows.values().stream().filter(row -> row.in("role").equals(role));
  }

  private double ratio(SeriesRow row) {
    double predicted = SeriesPrediction.of(row);
    double measured = row.measured();
    String over = row.in("over");
    if (!over.isEmpty()) {
      predicted /= SeriesPrediction.of(rows.get(over));
      measured /= rows.get(over).measured();
    }
    System.out.printf(
        Locale.ROOT,
        "%-22s %-11s predicted %8.4g, measured %8.4g%s: %.3f (%s)%n",
        row.in("id"),
        row.in("role"),
        predicted,
        measured,
        over.isEmpty() ? " " + row.in("unit") : " over " + over,
        predicted / measured,
        row.in("place"));
    return predicted / measured;
  }

  private Map<String, Scatter> kinds() {
    Map<String, Scatter> kinds = new LinkedHashMap<>();
    Stream.concat(of("calibration"), of("evidence"))
        .forEach(
            row ->
                kinds
                    .computeIfAbsent(
                        row.in("kind")
                            + (row.in("role").equals("calibration") ? " (calibration)" : ""),
                        Scatter::new)
                    .add(ratio(row)));
    return kinds;
  }

  private static String line(String kind, Scatter s) {
    String variation =
        s.count() > 1 ? String.format(Locale.ROOT, "%.2f", s.variation()) : "one row";
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.2f | %s | %.2f to %.2f |",
        kind,
        s.count(),
        s.bias(),
        variation,
        s.least(),
        s.most());
  }

  @Test
  void bias_and_scatter_are_what_the_contributors_guide_says() throws IOException {
    List<String> guide = Files.readAllLines(GUIDE);
    Map<String, Scatter> kinds = kinds();
    List<String> found = kinds.keySet().stream().map(k -> line(k, kinds.get(k))).toList();
    found.forEach(System.out::println);
    int head = guide.indexOf("| joints, predicted over measured | rows | bias | CoV | range |");
    assertTrue(head > 0, "the table of joints is missing in DEVELOPERS.md");
    List<String> written =
        guide.subList(head + 2, guide.size()).stream().takeWhile(x -> x.startsWith("|")).toList();
    assertEquals(found, written);
  }

  @Test
  void rows_that_cannot_be_predicted_say_why() {
    assertEquals(5, of("not predicted").count());
    of("not predicted")
        .forEach(
            row -> {
              System.out.printf(
                  "%-22s not predicted, measured %s %s: %s%n",
                  row.in("id"), row.in("mean"), row.in("unit"), row.in("assumed"));
              assertTrue(row.in("shape").isEmpty(), row.in("id"));
              assertTrue(row.in("assumed").contains(" read"), row.in("id"));
            });
  }

  @Test
  void every_row_names_paper_place_and_what_was_assumed() {
    for (SeriesRow row : rows.values()) {
      assertTrue(ROLES.contains(row.in("role")), row.in("id"));
      for (String column : List.of("kind", "paper", "place", "unit", "assumed")) {
        assertFalse(row.in(column).isBlank(), row.in("id") + " lacks " + column);
      }
      assertTrue(row.number("mean") > 0, row.in("id"));
      assertTrue(row.in("over").isEmpty() || rows.containsKey(row.in("over")), row.in("id"));
    }
    Set<String> divided =
        rows.values().stream().map(row -> row.in("over")).collect(Collectors.toSet());
    of("divisor").forEach(row -> assertTrue(divided.contains(row.in("id")), row.in("id")));
  }

  @Test
  void what_the_factor_was_calibrated_to_is_no_evidence() {
    assertEquals(2, of("calibration").count());
    of("evidence")
        .forEach(row -> assertFalse(row.in("paper").startsWith("Eckelman, Uysal"), row.in("id")));
  }
}
