package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSupport;
import org.stoutwork.analysis.model.Vec3;

class CondensedPanelTest {

  private static final PanelMaterial BEECH =
      new PanelMaterial(12_400, 930, 880, 790, 340, 0.42, 690);
  private static final double[][] POSTS = {{210, 70}, {230, 520}, {1190, 80}, {1160, 505}};

  private static FrameModel posts(double e) {
    FrameModelBuilder model = FrameModel.builder();
    model.section("post", new CrossSection(4200, 1.1e6, 1.9e6, 2.2e6, 3500, 3500));
    model.material("wood", e, e / 15, 640);
    for (int k = 0; k < POSTS.length; k++) {
      model.node("foot" + k, POSTS[k][0], POSTS[k][1], 0);
      model.node("head" + k, POSTS[k][0], POSTS[k][1], 690);
      model.member("post" + k, "foot" + k, "head" + k, "post", "wood");
      model.fixed("foot" + k);
    }
    return model.build();
  }

  private static PanelBuilder top(Link upright) {
    PanelBuilder panel =
        Panel.builder("top", 1420, 610, 47)
            .place(PanelPlace.flat(new Vec3(0, 0, 740)))
            .material(BEECH)
            .mesh(new PanelMesh.Even(11, 6))
            .report(700, 300)
            .report(1380, 20);
    for (int k = 0; k < POSTS.length; k++) {
      panel.tie(
          POSTS[k][0],
          POSTS[k][1],
          "head" + k,
          Map.of(
              Direction.UX,
              Link.elastic(2300 + 400 * k),
              Direction.UY,
              Link.RIGID,
              Direction.UZ,
              upright));
    }
    return panel;
  }

  private static final LoadCase WEIGHT = LoadCase.of("weight", Load.selfWeight());
  private static final LoadCase PATCH =
      LoadCase.of(
          "patch", PanelLoad.patch("top", 1360, 60, 90, 110, 1), Load.node("head1", 0.2, -0.1, 0));

  private static Combination together(double push) {
    return new Combination("together", Map.of(WEIGHT, 1.0, PATCH, push));
  }

  @Test
  void a_reduced_panel_answers_as_the_whole_one() {
    for (Link upright : List.of(Link.RIGID, Link.CONTACT, Link.elastic(5200))) {
      Panel panel = top(upright).build();
      FrameModel model = posts(11_300);
      PanelFrameSolver.Result whole =
          PanelFrameSolver.prepare(model, List.of(panel), List.of()).solver().solve(together(640));
      CondensedPanel reduced = CondensedPanel.of(panel, CondensedPanel.Mesh.SECOND);
      CondensedFrame.Solution solution = CondensedFrame.of(model, reduced).solve(together(640));
      PanelResult expected = whole.panels().get("top");
      for (double[] at : new double[][] {{700, 300}, {1380, 20}, {33, 571}}) {
        double w = expected.field().wAt(at[0], at[1]);
        assertEquals(w, solution.w(at[0], at[1]), 1e-8 * Math.abs(expected.wMin().value()));
      }
      double[] foot = ((FrameResult) whole.frame()).reaction("foot2");
      assertEquals(foot[2], solution.frame().reaction("foot2")[2], 1e-7 * foot[2]);
      assertTrue(solution.frame().equilibriumError() < 1e-9);
      assertTrue(solution.residual() < 1e-10);
      assertTrue(solution.reciprocity() < 1e-9);
      for (int k = 0; k < expected.ties().size(); k++) {
        assertEquals(expected.ties().get(k).open(), solution.ties().get(k).open());
        assertEquals(expected.ties().get(k).force(), solution.ties().get(k).force(), 1e-4);
      }
    }
  }

  @Test
  void a_load_outside_the_bearings_lifts_the_panel_off_the_far_ones() {
    CondensedPanel panel = CondensedPanel.of(top(Link.CONTACT).build(), CondensedPanel.Mesh.FIRST);
    CondensedFrame.Solution solution = CondensedFrame.of(posts(11_300), panel).solve(together(640));
    assertTrue(solution.ties().stream().anyMatch(PanelTieForce::open));
    assertTrue(
        solution.ties().stream()
            .filter(t -> t.direction() == Direction.UZ)
            .allMatch(t -> t.force() > -1e-6));
  }

  @Test
  void one_reduced_panel_serves_frames_of_different_stiffness() {
    CondensedPanel panel = CondensedPanel.of(top(Link.RIGID).build(), CondensedPanel.Mesh.FIRST);
    double soft = CondensedFrame.of(posts(3_100), panel).solve(PATCH).w(1360, 60);
    double stiff = CondensedFrame.of(posts(12_900), panel).solve(PATCH).w(1360, 60);
    assertTrue(soft < stiff && stiff < 0);
  }

  @Test
  void loads_at_two_places_move_each_others_place_alike() {
    CondensedPanel panel = CondensedPanel.of(top(Link.RIGID).build(), CondensedPanel.Mesh.FIRST);
    CondensedFrame frame = CondensedFrame.of(posts(9_700), panel);
    LoadCase a = LoadCase.of("a", PanelLoad.point("top", 590, 140, 1));
    LoadCase b = LoadCase.of("b", PanelLoad.point("top", 1310, 480, 1));
    double there = frame.solve(a).w(1310, 480);
    double back = frame.solve(b).w(590, 140);
    assertEquals(there, back, 1e-10 * Math.abs(there));
  }

  @Test
  void a_panel_that_the_ground_holds_is_not_reduced() {
    Panel held = top(Link.RIGID).support(PanelSupport.knifeEdge(PanelLine.x(300))).build();
    assertThrows(
        IllegalArgumentException.class, () -> CondensedPanel.of(held, CondensedPanel.Mesh.FIRST));
  }

  @Test
  void a_panel_with_two_bearings_is_refused_as_loose() {
    PanelBuilder panel =
        Panel.builder("top", 1420, 610, 47).material(BEECH).mesh(new PanelMesh.Even(6, 4));
    panel.tie(200, 300, "head0", Map.of(Direction.UZ, Link.RIGID));
    panel.tie(1200, 300, "head1", Map.of(Direction.UZ, Link.RIGID));
    Panel rocking = panel.build();
    assertThrows(
        IllegalStateException.class, () -> CondensedPanel.of(rocking, CondensedPanel.Mesh.FIRST));
  }

  @Test
  void other_members_in_a_frame_with_a_panel_keep_the_loads_on_the_panel() {
    Panel panel = top(Link.RIGID).build();
    PreparedFrame changed =
        PanelFrameSolver.prepare(posts(12_900), List.of(panel), List.of())
            .solver()
            .frame()
            .withMembers(posts(12_900).members())
            .prepared();
    FrameResult result = changed.solve(PATCH).result();
    double up = 0;
    for (int k = 0; k < POSTS.length; k++) {
      up += result.reaction("foot" + k)[2];
    }
    assertEquals(1, up, 1e-9);
  }

  @Test
  void mesh_lines_that_fall_back_are_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PanelMesh.Lines(List.of(120.0, 90.0), List.of(50.0)));
  }
}
