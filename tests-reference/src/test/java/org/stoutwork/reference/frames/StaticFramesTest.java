package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.MemberResult;

/**
 * First-order frames against two independent programs (direct stiffness; flexibility by virtual
 * work and quadrature), portals also against Kleinlogel, <em>Rahmenformeln</em>; each file names
 * its sources and its tolerance.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StaticFramesTest {
  private double largest;
  private double largestEquilibrium;
  private double largestCondition;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "F01_portal_pinned_udl",
        "F02_portal_fixed_udl",
        "F03_portal_pinned_sway",
        "F04_portal_fixed_sway",
        "F05_portal_semi_rigid_sway",
        "F06_portal_shear_axial",
        "F07_H_frame_racking",
        "F08_two_rail_racking_semi_rigid",
        "F09_space_bench_base_rigid",
        "F10_space_bench_semi_rigid",
        "F11_braced_releases",
        "F12_rigid_offsets",
        "F13_settlement",
        "F14_splayed_gable",
        "F15_L_cantilever_torsion",
        "F16_skew_roll_axes",
        "F17_compression_only_all_touch",
        "F18_compression_only_uplift",
        "F19_compression_only_elastic",
        "F21_buckling_portal",
        "F23_uplift_rigid_joints"
      })
  void a_frame_moves_and_carries_as_the_reference_says(String name) {
    FrameFile file = FrameFile.read("frames/" + name + ".json");
    var frame = FrameSolver.prepare(file.model()).prepared();
    FrameResult result = frame.solve(file.loads()).result();
    double difference = compare(file.expected(), result);
    largest = Math.max(largest, difference);
    largestEquilibrium = Math.max(largestEquilibrium, result.equilibriumError());
    largestCondition = Math.max(largestCondition, frame.conditionNumber());
    assertTrue(
        difference <= file.expected().get("rel_tolerance").asDouble(),
        () -> name + " differs by " + difference);
    assertTrue(
        result.equilibriumError() <= 1e-11,
        () -> name + " leaves " + result.equilibriumError() + " unbalanced");
    file.expected()
        .path("contact")
        .properties()
        .forEach(
            c ->
                assertEquals(
                    c.getValue().asText(),
                    result.contact(c.getKey()).touching() ? "touching" : "lifted",
                    c.getKey()));
  }

  private static double compare(JsonNode expected, FrameResult result) {
    Differences differences = new Differences();
    expected
        .get("displacements")
        .properties()
        .forEach(n -> differences.displacements(n.getValue(), result.displacement(n.getKey())));
    expected
        .get("reactions")
        .properties()
        .forEach(n -> differences.forces(n.getValue(), result.reaction(n.getKey())));
    expected
        .get("member_end_forces")
        .properties()
        .forEach(
            m -> {
              MemberResult member = result.member(m.getKey());
              differences.forces(m.getValue().get("start"), member.start());
              differences.forces(m.getValue().get("end"), member.end());
            });
    expected
        .path("member_internal_forces")
        .properties()
        .forEach(
            m -> {
              JsonNode x = m.getValue().get("x");
              for (int i = 0; i < x.size(); i++) {
                differences.forces(
                    m.getValue().get("values").get(i),
                    result.member(m.getKey()).internalAt(x.get(i).asDouble()));
              }
            });
    return differences.largest();
  }

  @AfterAll
  void tell() {
    System.out.printf(
        Locale.ROOT,
        "LARGEST static frames: difference %.1e, unbalanced %.1e, condition %.1e%n",
        largest,
        largestEquilibrium,
        largestCondition);
  }
}
