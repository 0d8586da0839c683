package org.stoutwork.reference.beams;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.MemberResult.Force;

/**
 * Straight beams against exact symbolic integration of the Timoshenko equations with rational
 * numbers, and against handbook values (AISC Steel Construction Manual, Table 3-23; theorem of
 * three moments; slope-deflection) where the row names one.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StraightBeamsTest {
  private double largestExact;
  private double largestHandbook;
  private int handbookRows;

  static Stream<Map<String, String>> rows() {
    return Csv.read("beams/beams.csv").stream();
  }

  private record Solved(StraightBeam beam, FrameResult result, List<MemberResult> members) {
    double moment(double x) {
      int k = beam.memberAt(x);
      return -members.get(k).internalAt(x - beam.places().get(k))[4];
    }

    double momentAfter(double x) {
      int k = beam.places().indexOf(x);
      boolean starts = k >= 0 && k < members.size();
      return starts ? -members.get(k).internalAt(0)[4] : moment(x + 1e-5);
    }

    double[] deflection(double x) {
      int k = beam.memberAt(x);
      return members.get(k).deflectionAt(x - beam.places().get(k));
    }

    double extreme(Force force, int sign) {
      double best = Double.NEGATIVE_INFINITY;
      for (MemberResult m : members) {
        Extreme e = sign > 0 ? m.along(force).maximum() : m.along(force).minimum();
        best = Math.max(best, sign * e.value());
      }
      return sign * best;
    }

    double lowest() {
      return members.stream()
          .mapToDouble(m -> m.deflectionAlong(2).minimum().value())
          .min()
          .orElseThrow();
    }

    double highest() {
      return members.stream()
          .mapToDouble(m -> m.deflectionAlong(2).maximum().value())
          .max()
          .orElseThrow();
    }

    double reaction(String key) {
      double x = Double.parseDouble(key.substring(2));
      double[] r = result.reaction("n" + beam.places().indexOf(x));
      return key.startsWith("F") ? r[2] : -r[4];
    }
  }

  private static Solved solve(Map<String, String> row) {
    StraightBeam beam = new StraightBeam(row);
    FrameResult result = FrameSolver.prepare(beam.model()).prepared().solve(beam.loads()).result();
    List<MemberResult> members = new ArrayList<>();
    for (int k = 0; k + 1 < beam.places().size(); k++) {
      members.add(result.member("b" + k));
    }
    return new Solved(beam, result, members);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_beam_bends_as_exact_integration_says(Map<String, String> row) {
    Solved s = solve(row);
    StraightBeam b = s.beam();
    double tolerance = b.number("rel_tolerance");
    double moment = Math.max(Math.abs(b.number("M_max_Nmm")), Math.abs(b.number("M_min_Nmm")));
    double w = Math.max(Math.abs(b.number("w_min_mm")), Math.abs(b.number("w_max_mm")));
    double shear = b.number("V_abs_max_N");
    moment = Math.max(moment, shear);
    List<Double> differences = new ArrayList<>();
    differences.add((-s.extreme(Force.MY, -1) - b.number("M_max_Nmm")) / moment);
    differences.add((-s.extreme(Force.MY, 1) - b.number("M_min_Nmm")) / moment);
    double v = Math.max(s.extreme(Force.VZ, 1), -s.extreme(Force.VZ, -1));
    differences.add((v - shear) / Math.max(shear, moment / b.number("L_mm")));
    differences.add((s.lowest() - b.number("w_min_mm")) / w);
    differences.add((s.highest() - b.number("w_max_mm")) / w);
    differences.add((s.deflection(b.number("x_w_min_mm"))[2] - b.number("w_min_mm")) / w);
    differences.add((s.deflection(b.number("x_w_max_mm"))[2] - b.number("w_max_mm")) / w);
    for (String reaction : row.get("reactions").split(";", -1)) {
      String[] p = reaction.split("=", -1);
      double expected = Double.parseDouble(p[1]);
      double scale = p[0].startsWith("F") ? Math.max(shear, moment / b.number("L_mm")) : moment;
      differences.add((s.reaction(p[0]) - expected) / scale);
    }
    double worst = differences.stream().mapToDouble(Math::abs).max().orElseThrow();
    largestExact = Math.max(largestExact, worst);
    assertTrue(worst <= tolerance, () -> row.get("id") + " " + differences);
    assertTrue(s.result().equilibriumError() <= 1e-11);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void the_stated_places_of_extreme_moments_carry_them(Map<String, String> row) {
    Solved s = solve(row);
    StraightBeam b = s.beam();
    double scale =
        Math.max(
            b.number("V_abs_max_N"),
            Math.max(Math.abs(b.number("M_max_Nmm")), Math.abs(b.number("M_min_Nmm"))));
    for (String which : List.of("max", "min")) {
      double x = b.number("x_M_" + which + "_mm");
      double expected = b.number("M_" + which + "_Nmm");
      // One side of a couple carries the extreme, whichever it is.
      double difference =
          Math.min(
              Math.abs(s.moment(x) - expected),
              x >= b.number("L_mm") ? Double.MAX_VALUE : Math.abs(s.momentAfter(x) - expected));
      assertTrue(difference <= 1e-6 * scale, () -> row.get("id") + " at " + x);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_beam_agrees_with_its_handbook_value(Map<String, String> row) {
    String quantity = row.get("handbook_quantity");
    Solved s = solve(row);
    if (quantity.isEmpty()) {
      assertTrue(row.get("handbook_source").isEmpty(), "a source without a value");
      return;
    }
    double expected = Double.parseDouble(row.get("handbook_value"));
    double found =
        switch (quantity) {
          case "M_max" -> -s.extreme(Force.MY, -1);
          case "M_min" -> -s.extreme(Force.MY, 1);
          case "w_min" -> s.lowest();
          case "w_max" -> s.highest();
          default -> at(s, quantity);
        };
    handbookRows++;
    double difference = Math.abs(found / expected - 1);
    largestHandbook = Math.max(largestHandbook, difference);
    assertTrue(
        difference <= s.beam().number("rel_tolerance"),
        () -> row.get("id") + " " + quantity + " " + found);
  }

  private static double at(Solved s, String quantity) {
    double x = Double.parseDouble(quantity.substring(quantity.indexOf('@') + 1));
    return switch (quantity.substring(0, quantity.indexOf('@'))) {
      case "F", "C" -> s.reaction(quantity);
      case "M" -> s.moment(x);
      case "w" -> s.deflection(x)[2];
      case "psi" -> -s.deflection(x)[4];
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  @Test
  void the_table_is_complete() {
    assertTrue(rows().count() >= 58, "the table should hold 58 beams");
  }

  @AfterAll
  void tell() {
    System.out.printf(
        Locale.ROOT,
        "LARGEST beams: exact integration %.1e, handbook %.1e in %d rows%n",
        largestExact,
        largestHandbook,
        handbookRows);
  }
}
