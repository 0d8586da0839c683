package org.stoutwork.reference.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelEdge;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelSupport;
import org.stoutwork.analysis.solve.Mode;
import org.stoutwork.analysis.solve.Modes;
import org.stoutwork.analysis.solve.PanelFrameSolver;

/**
 * Frequencies of a simply supported thin orthotropic plate: ω² = (D11 α⁴ + 2 (D12 + 2 D66) α² β² +
 * D22 β⁴) / (ρ h), α = m π / a, β = n π / b (A. W. Leissa, <em>Vibration of Plates</em>, NASA
 * SP-160, 1969, chapter 9, from memory; derived again by putting w = sin sin into the equation).
 */
class PlateFrequencyTest {
  @Test
  void the_two_lowest_frequencies_of_a_simply_supported_top_are_met() {
    double a = 1500;
    double b = 600;
    PanelBuilder builder =
        Panel.builder("top", a, b, 45)
            .material(new PanelMaterial(11000, 500, 690, 690, 150, 0.35, 450))
            .thin(true)
            .mesh(new PanelMesh.Even(18, 12));
    for (PanelEdge edge : PanelEdge.values()) {
      builder.support(PanelSupport.hard(edge.line(a, b)));
    }
    PanelFrameSolver solver =
        PanelFrameSolver.prepare(FrameModel.builder().build(), List.of(builder.build()), List.of())
            .solver();
    List<Mode> fine = Modes.frequencies(solver.frame(), 2, false, 1);
    List<Mode> coarse = Modes.frequencies(solver.coarseFrame(), 2, false, 1);
    double[] exact = {95.7407714, 223.957135};
    for (int k = 0; k < 2; k++) {
      double f = fine.get(k).value();
      assertEquals(exact[k], f, 0.005 * exact[k]);
      assertEquals(exact[k], f + (f - coarse.get(k).value()) / 3, 0.0005 * exact[k]);
    }
  }
}
