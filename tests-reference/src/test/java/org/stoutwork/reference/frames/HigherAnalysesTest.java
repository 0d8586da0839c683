package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.Mode;
import org.stoutwork.analysis.solve.Modes;
import org.stoutwork.analysis.solve.PreparedFrame;
import org.stoutwork.analysis.solve.SecondOrder;
import org.stoutwork.analysis.solve.SecondOrderResult;

/**
 * Second-order, buckling and vibration of portals against exact stiffness by matrix exponential and
 * CalculiX 2.20 (B32R); each file names its sources and tolerance.
 */
class HigherAnalysesTest {
  private static PreparedFrame prepared(FrameFile file) {
    return FrameSolver.prepare(file.model()).prepared();
  }

  @Test
  void a_portal_sways_further_under_its_own_axial_forces() {
    FrameFile file = FrameFile.read("frames/F20_second_order_portal.json");
    SecondOrderResult result = SecondOrder.solve(prepared(file), file.loads()).result();
    Differences differences = new Differences();
    JsonNode expected = file.expected();
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
              differences.forces(m.getValue().get("start"), result.start(m.getKey()));
              differences.forces(m.getValue().get("end"), result.end(m.getKey()));
            });
    System.out.printf(
        Locale.ROOT,
        "LARGEST second order: difference %.1e, unbalanced %.1e, residual %.1e, %d rounds%n",
        differences.largest(),
        result.equilibriumError(),
        result.residual(),
        result.rounds());
    assertTrue(differences.largest() <= expected.get("rel_tolerance").asDouble());
    assertTrue(result.equilibriumError() <= 1e-10);
  }

  @Test
  void a_portal_buckles_at_the_stated_factor() {
    FrameFile file = FrameFile.read("frames/F21_buckling_portal.json");
    List<Mode> modes = Modes.buckling(prepared(file), Combination.of(file.loads()), 2);
    double expected = file.expected().get("buckling_factor").asDouble();
    System.out.printf(
        Locale.ROOT, "LARGEST portal buckling: %.1e%n", modes.get(0).value() / expected - 1);
    double tolerance = file.expected().get("buckling_tolerance").asDouble();
    assertEquals(1, modes.get(0).value() / expected, tolerance);
  }

  @Test
  void a_portal_vibrates_at_the_stated_frequencies() {
    FrameFile file = FrameFile.read("frames/F22_frequency_portal.json");
    double worst = 0;
    for (boolean rotary : new boolean[] {true, false}) {
      String key = rotary ? "frequencies_hz" : "frequencies_hz_without_rotary_inertia";
      JsonNode expected = file.expected().get(key);
      List<Mode> modes = Modes.frequencies(prepared(file), expected.size(), rotary, Modes.PIECES);
      for (int i = 0; i < expected.size(); i++) {
        double ratio = modes.get(i).value() / expected.get(i).asDouble();
        worst = Math.max(worst, Math.abs(ratio - 1));
        assertEquals(1, ratio, file.expected().get("frequency_tolerance").asDouble());
      }
    }
    System.out.printf(Locale.ROOT, "LARGEST portal frequencies: %.1e%n", worst);
    assertTrue(worst < 1e-3, "the mesh is fine enough for a closer agreement");
  }
}
