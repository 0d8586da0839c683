package org.stoutwork.reference.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * Sway of the examples along the bench against the sum that a maker does on paper: legs that do not
 * bend, feet that turn freely, each rail end a spring of the stiffness that the file states, so
 * that work gives δ = H h²/Σk (derived).
 *
 * <p>The sum leaves out that legs bend between their rails (more sway) and that springs sit at the
 * shoulders, so that rails are shorter than from leg to leg (less): 20 % is what it is good for.
 */
class SwayByHandTest {

  private static final double GOOD_FOR = 0.2;

  /** Thrust N, height mm, sum of the stated k over all rail ends in kN·m/rad, sway by hand mm. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // 8 ends of 12 kN·m/rad
    "class-bench,          400, 760,  96,   2.4067",
    // 8 ends of 20
    "class-bench-improved, 400, 760, 160,   1.4440",
    // 4 ends of 15 and 4 of 9
    "planer-bench,         300, 648,  96,   1.3122",
    // 4 ends of 17.3 and 4 of 12.7
    "planer-bench-improved,300, 648, 120,   1.0498",
    // 4 ends of 15 and 2 of 25
    "long-spar-bench,      400, 850, 110,   2.6273"
  })
  void examples_sway_along_about_as_by_hand(
      String example, double thrust, double height, double springs, double byHand)
      throws UnreadableFile {
    assertEquals(byHand, thrust * height * height / (springs * 1e6), 1e-4 * byHand);
    Path file = Path.of("..", "report", "examples", example + ".yaml");
    BenchResult result =
        BenchCheck.load().run(BenchFileReader.read(file, WoodCatalogue.load()).bench());
    CheckResult.Checked sway =
        result.checked().stream()
            .filter(c -> c.key().equals("sway-along"))
            .findFirst()
            .orElseThrow();
    double computed = sway.demand().value();
    System.out.printf("%s: %.3f mm by hand, %.3f mm computed%n", example, byHand, computed);
    assertEquals(byHand, computed, GOOD_FOR * byHand, example);
  }
}
