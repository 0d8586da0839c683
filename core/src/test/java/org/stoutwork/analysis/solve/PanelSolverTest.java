package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.PanelSupport;

class PanelSolverTest {
  private static final PanelMaterial BEECH =
      new PanelMaterial(12600, 860, 830, 780, 210, 0.36, 710);

  private static PanelBuilder top() {
    return Panel.builder("top", 1330, 570, 42).material(BEECH).mesh(new PanelMesh.Auto(12));
  }

  @Test
  void a_strip_without_poissons_effect_is_a_beam() {
    PanelMaterial m = new PanelMaterial(11000, 450, 690, 640, 120, 0, 0);
    double length = 1100;
    Panel strip =
        Panel.builder("top", length, 120, 30)
            .material(m)
            .support(PanelSupport.knifeEdge(PanelLine.x(0)))
            .support(PanelSupport.knifeEdge(PanelLine.x(length)))
            .report(length / 2, 60)
            .report(length / 4, 60)
            .build();
    double q = 0.003;
    PanelResult result = PanelSolver.solve(strip, List.of(PanelLoad.pressure("top", q)));
    double d = 11000 * Math.pow(30, 3) / 12;
    double beam =
        5 * q * Math.pow(length, 4) / (384 * d) + q * length * length / (8 * 5.0 / 6 * 640 * 30);
    PanelPointResult middle = result.report().get(0);
    assertEquals(-beam, middle.w(), 1e-5 * beam);
    double m0 = q * length * length / 8;
    assertEquals(m0, middle.forces().mx(), 1e-4 * m0);
    PanelPointResult quarter = result.report().get(1);
    assertEquals(0.75 * m0, quarter.forces().mx(), 1e-4 * m0);
    assertEquals(q * length / 4, quarter.forces().qx(), 1e-3 * q * length);
  }

  @Test
  void a_lifted_end_carries_nothing_and_the_rest_balances() {
    Panel panel =
        top()
            .support(PanelSupport.pressing(PanelLine.x(250)))
            .support(PanelSupport.pressing(PanelLine.x(700)))
            .support(PanelSupport.pressing(PanelLine.x(1300)))
            .build();
    PanelLoad load = PanelLoad.patch("top", 400, 285, 80, 80, 900);
    PanelResult result = PanelSolver.solve(panel, List.of(load));
    double sum = 0;
    for (PanelReaction reaction : result.reactions()) {
      for (PanelReaction.Part part : reaction.parts()) {
        assertTrue(part.force() >= -1e-7, part.toString());
        assertTrue(!part.open() || part.force() == 0, part.toString());
      }
      sum += reaction.force();
    }
    assertEquals(900, sum, 1e-6);
    assertEquals(0, result.reactions().get(2).force(), 1e-7);
    assertEquals(570, result.reactions().get(2).openLength(), 1e-6);
    assertTrue(result.field().wAt(1300, 285) > 0);
  }

  @Test
  void an_elastic_pressing_line_is_between_a_rigid_one_and_none() {
    PanelLoad load = PanelLoad.patch("top", 640, 90, 80, 80, 900);
    double[] sag = new double[3];
    Link[] links = {Link.CONTACT, Link.contact(0.5), Link.contact(1e-6)};
    for (int k = 0; k < 3; k++) {
      Panel panel =
          top()
              .support(PanelSupport.knifeEdge(PanelLine.x(0)))
              .support(PanelSupport.knifeEdge(PanelLine.x(1330)))
              .support(new PanelSupport(PanelLine.x(700), Optional.of(links[k]), false, false))
              .build();
      sag[k] = -PanelSolver.solve(panel, List.of(load)).wMin().value();
    }
    assertTrue(sag[0] < sag[1] && sag[1] < sag[2], sag[0] + " " + sag[1] + " " + sag[2]);
  }

  @Test
  void a_load_beyond_its_pressing_lines_tips_a_top() {
    Panel panel =
        top()
            .support(PanelSupport.pressing(PanelLine.x(300)))
            .support(PanelSupport.pressing(PanelLine.x(900)))
            .build();
    List<PanelLoad> loads = List.of(PanelLoad.point("top", 1200, 285, 600));
    PanelNotHeldException refused =
        assertThrows(PanelNotHeldException.class, () -> PanelSolver.solve(panel, loads));
    assertTrue(refused.getMessage().contains("tips"), refused.getMessage());
  }

  @Test
  void a_top_without_support_is_refused_by_name() {
    Panel panel = top().support(PanelSupport.knifeEdge(PanelLine.x(300))).build();
    List<PanelLoad> loads = List.of(PanelLoad.pressure("top", 1e-3));
    PanelNotHeldException refused =
        assertThrows(PanelNotHeldException.class, () -> PanelSolver.solve(panel, loads));
    assertTrue(refused.getMessage().contains("top"), refused.getMessage());
  }

  @Test
  void a_stiff_zone_of_the_same_section_changes_nothing() {
    PanelSection solid = PanelSection.solid(BEECH, 42);
    PanelLoad load = PanelLoad.patch("top", 640, 90, 80, 80, 900);
    PanelBuilder plain = lines(top()).report(640, 300).mesh(new PanelMesh.Even(14, 8));
    PanelBuilder zoned = lines(top()).report(640, 300).mesh(new PanelMesh.Even(14, 8));
    zoned.zone(0, 0, 1330, 570, solid);
    double a = PanelSolver.solve(plain.build(), List.of(load)).report().get(0).w();
    double b = PanelSolver.solve(zoned.build(), List.of(load)).report().get(0).w();
    assertEquals(a, b, 1e-12);
  }

  private static PanelBuilder lines(PanelBuilder builder) {
    return builder
        .support(PanelSupport.knifeEdge(PanelLine.x(95)))
        .support(PanelSupport.knifeEdge(PanelLine.x(1235)));
  }

  @Test
  void holes_and_openings_weaken_a_top_in_order() {
    PanelLoad load = PanelLoad.patch("top", 900, 90, 80, 80, 900);
    double whole = sag(lines(top()).build(), load);
    PanelSection holed = PanelSection.solid(BEECH, 42).reduced(0.8);
    double strip = sag(lines(top()).zone(95, 300, 1235, 360, holed).build(), load);
    double well = sag(lines(top()).opening(300, 300, 800, 420).build(), load);
    assertTrue(whole < strip, whole + " " + strip);
    assertTrue(strip < well, strip + " " + well);
  }

  private static double sag(Panel panel, PanelLoad load) {
    return -PanelSolver.solve(panel, List.of(load)).wMin().value();
  }

  /** Square openings of the same area stand for round holes; loads beside the row and far off. */
  @Test
  void a_strip_with_holes_stands_for_a_row_of_openings() {
    double d = 20;
    double spacing = 100;
    double half = Math.sqrt(Math.PI) / 4 * d;
    PanelBuilder openings = lines(top());
    for (int k = 0; k < 11; k++) {
      double x = 140 + spacing * k;
      openings.opening(x - half, 110 - half, x + half, 110 + half);
    }
    PanelSection holed = PanelSection.solid(BEECH, 42).withHoles(d, spacing);
    Panel strip = lines(top()).zone(95, 110 - d / 2, 1190, 110 + d / 2, holed).build();
    PanelSection tooStiff = PanelSection.solid(BEECH, 42).reduced(1 - d / spacing);
    Panel inProportion = lines(top()).zone(95, 110 - d / 2, 1190, 110 + d / 2, tooStiff).build();
    for (double y : new double[] {190, 400}) {
      PanelLoad load = PanelLoad.patch("top", 590, y, 70, 70, 900);
      double whole = sag(lines(top()).build(), load);
      double byOpenings = sag(openings.build(), load) / whole - 1;
      double byStrip = sag(strip, load) / whole - 1;
      assertEquals(byOpenings, byStrip, 0.3 * byOpenings, "load at " + y);
      assertTrue(sag(inProportion, load) / whole - 1 < 0.5 * byOpenings, "load at " + y);
    }
  }

  @Test
  void a_gap_through_the_whole_length_leaves_two_slabs() {
    PanelLoad load = PanelLoad.patch("top", 640, 100, 70, 70, 900);
    double gapped = sag(lines(top()).opening(0, 280, 1330, 300).build(), load);
    Panel alone =
        lines(Panel.builder("top", 1330, 280, 42).material(BEECH).mesh(new PanelMesh.Auto(12)))
            .build();
    assertEquals(sag(alone, load), gapped, 2e-3 * gapped);
    assertTrue(gapped > 1.2 * sag(lines(top()).build(), load));
  }

  /** Springs of 1e-12 of a panel's own stiffness hold nothing; between, right or refused. */
  @Test
  void a_panel_on_next_to_nothing_is_refused_or_answered_right() {
    double own = 12600 * Math.pow(42, 3) / 12 / Math.pow(1330, 3);
    for (double part : new double[] {1e-3, 1e-4, 1e-6, 1e-9, 1e-12}) {
      double k = part * own;
      Panel panel =
          top()
              .support(new PanelSupport(PanelLine.x(0), Optional.of(Link.elastic(k)), false, false))
              .support(
                  new PanelSupport(PanelLine.x(1330), Optional.of(Link.elastic(k)), false, false))
              .report(665, 285)
              .build();
      List<PanelLoad> loads = List.of(PanelLoad.pressure("top", 1e-9));
      try {
        double w = -PanelSolver.solve(panel, loads).report().get(0).w();
        // Two springs k a mm of width carry q a: it sinks by q a / 2k, however it bends.
        double sunk = 1e-9 * 1330 / (2 * k);
        assertTrue(part > 1e-12, "answered with " + w + " at " + part);
        assertEquals(sunk, w, (0.05 * part + 2e-6) * sunk, "part " + part);
      } catch (PanelNotHeldException refused) {
        assertTrue(part < 1e-4, "refused at " + part);
        assertTrue(refused.getMessage().contains("top"), refused.getMessage());
      }
    }
  }

  @Test
  void a_load_over_an_opening_is_refused() {
    Panel panel = lines(top()).opening(300, 300, 800, 420).build();
    List<PanelLoad> loads = List.of(PanelLoad.patch("top", 810, 350, 80, 80, 900));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> PanelSolver.solve(panel, loads));
    assertTrue(refused.getMessage().contains("opening"), refused.getMessage());
  }

  @Test
  void a_moving_load_sinks_most_at_the_middle_of_a_free_edge() {
    Panel panel =
        Panel.builder("top", 1330, 570, 42)
            .material(BEECH)
            .mesh(new PanelMesh.Auto(8))
            .support(PanelSupport.knifeEdge(PanelLine.x(0)))
            .support(PanelSupport.knifeEdge(PanelLine.x(1330)))
            .build();
    PanelMovingLoad.Worst worst = PanelMovingLoad.worst(panel, 60, 40, 1000, List.of());
    assertEquals(665, worst.x(), 10);
    assertEquals(20, worst.y(), 1e-6);
    PanelLoad there = PanelLoad.patch("top", worst.x(), worst.y(), 60, 40, 1000);
    PanelResult solved =
        PanelSolver.solve(panel.toBuilder().report(worst.x(), worst.y()).build(), List.of(there));
    assertEquals(solved.report().get(0).w(), worst.w(), 0.02 * Math.abs(worst.w()));
  }

  @Test
  void the_error_of_the_mesh_covers_the_step_to_a_finer_one() {
    PanelLoad load = PanelLoad.patch("top", 640, 90, 80, 80, 900);
    PanelResult rough =
        PanelSolver.solve(
            lines(top()).mesh(new PanelMesh.Auto(8)).report(640, 90).build(), List.of(load));
    PanelResult finer =
        PanelSolver.solve(
            lines(top()).mesh(new PanelMesh.Auto(40)).report(640, 90).build(), List.of(load));
    double change = Math.abs(rough.report().get(0).w() / finer.report().get(0).w() - 1);
    assertTrue(change < rough.meshError(), change + " against " + rough.meshError());
    assertTrue(finer.meshError() < rough.meshError());
  }
}
