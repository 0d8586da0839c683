package org.stoutwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.AdviceLine;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Utilisation;
import org.stoutwork.result.Verdict;
import org.stoutwork.working.Line;

/** What must be so in every result, whatever the bench. */
class WholenessTest {

  static List<BenchResult> results() {
    LawBench vise = new LawBench();
    vise.viseMass = 11;
    LawBench classWood = new LawBench();
    classWood.wood = "C24";
    LawBench bolted = new LawBench();
    bolted.stretcherJoint = JointKind.BED_BOLT;
    LawBench drawbored = new LawBench();
    drawbored.hold = JointHold.DRAWBORED;
    return List.of(LawBench.ordinary(), vise.run(), classWood.run(), bolted.run(), drawbored.run());
  }

  @ParameterizedTest
  @MethodSource("results")
  void forces_balance_in_every_analysis(BenchResult result) {
    assertTrue(result.selfCheck().equilibriumError() <= 1e-9, result.selfCheck().toString());
    assertTrue(result.selfCheck().analyses() > 50);
    assertTrue(result.selfCheck().holds());
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_check_shows_how_it_was_calculated(BenchResult result) {
    for (CheckResult.Checked check : result.checked()) {
      assertFalse(check.working().lines().isEmpty(), check.key());
      assertFalse(check.working().sources().isEmpty(), check.key());
      check.working().sources().forEach(s -> assertFalse(s.line().isBlank(), check.key()));
      assertEquals(check.demand().unit(), check.capacity().unit(), check.key());
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void the_working_of_a_check_ends_in_its_utilisation_at_mean_stiffness(BenchResult result) {
    int compared = 0;
    for (CheckResult.Checked check : result.checked()) {
      double mean = check.range().map(StiffnessRange::mean).orElse(check.utilisation());
      double ratio = check.demand().value() / check.capacity().value();
      assertEquals(mean, ratio, 1e-9 * (1 + mean), check.key() + " " + check.title());
      if (endsInUtilisation(check)) {
        assertEquals(mean, check.working().result().orElseThrow(), 1e-9 * (1 + mean), check.key());
        compared++;
      }
    }
    assertTrue(compared > 8, "only " + compared);
  }

  private static boolean endsInUtilisation(CheckResult.Checked check) {
    return check.working().lines().stream()
        .filter(Line.Calculated.class::isInstance)
        .map(line -> ((Line.Calculated) line).formula().result().symbol())
        .reduce((first, second) -> second)
        .filter("u"::equals)
        .isPresent();
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_verdict_follows_from_the_range_that_is_shown(BenchResult result) {
    for (CheckResult.Checked check : result.checked()) {
      Verdict own = check.range().map(Verdict::of).orElseGet(() -> Verdict.of(check.utilisation()));
      assertEquals(own, check.verdict(), check.key());
      assertTrue(check.utilisation() <= Utilisation.MOST, check.key());
      assertTrue(check.utilisation() >= 0, check.key());
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_default_is_listed_once_with_its_reason(BenchResult result) {
    List<DefaultTaken> defaults = result.bench().defaults();
    Set<String> keys = defaults.stream().map(DefaultTaken::key).collect(Collectors.toSet());
    assertEquals(defaults.size(), keys.size());
    defaults.forEach(d -> assertFalse(d.reason().isBlank() || d.value().isBlank(), d.key()));
    for (String wanted : List.of("duty", "footing", "basis", "air.climate")) {
      assertTrue(keys.contains(wanted), wanted + " is none of " + keys);
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void a_bare_number_says_of_what_it_is_a_share(BenchResult result) {
    for (CheckResult.Checked check : result.checked()) {
      boolean bare = check.demand().unit() == Unit.ONE;
      assertEquals(bare, !check.wording().of().isEmpty(), check.key());
    }
    for (AdviceLine line : result.advice()) {
      assertEquals(line.value().unit() == Unit.ONE, !line.of().isEmpty(), line.part());
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void distances_are_needed_and_forces_are_used(BenchResult result) {
    for (CheckResult.Checked check : result.checked()) {
      Unit unit = check.demand().unit();
      if (unit == Unit.N || unit == Unit.N_MM || unit == Unit.MPA) {
        assertFalse(check.wording().least(), check.key());
      }
      if (check.title().matches(".*( from the (edge|end) of |[Ss]pacing of |[Rr]each of ).*")) {
        assertTrue(check.wording().least(), check.key());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void the_opening_of_a_shoulder_is_no_verdict(BenchResult result) {
    assertTrue(
        result.checked().stream().noneMatch(c -> c.key().contains("opening-under-moment")),
        "a limit of service among the checks");
  }
}
