package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
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

class PanelFrameTest {
  private static final PanelMaterial BEECH =
      new PanelMaterial(12600, 860, 830, 780, 210, 0.36, 710);

  private static CrossSection rectangle(double b, double h) {
    double area = b * h;
    return new CrossSection(
        area, area * h * h / 12, area * b * b / 12, area * b * b / 8, area / 1.2, area / 1.2);
  }

  private static PanelBuilder top() {
    return Panel.builder("top", 1330, 570, 42)
        .material(BEECH)
        .mesh(new PanelMesh.Auto(10))
        .report(410, 130)
        .report(700, 570);
  }

  private static PanelFrameSolver.Result solve(FrameModel model, Panel panel, Load... loads) {
    LoadCase loadCase = LoadCase.of("load", loads);
    return PanelFrameSolver.prepare(model, List.of(panel), List.of(loadCase))
        .solver()
        .solve(loadCase);
  }

  private static void assertSame(PanelResult a, PanelResult b, double tolerance) {
    for (int k = 0; k < a.report().size(); k++) {
      PanelPointResult p = a.report().get(k);
      PanelPointResult q = b.report().get(k);
      assertEquals(p.w(), q.w(), tolerance * Math.abs(p.w()));
      assertEquals(p.forces().mx(), q.forces().mx(), tolerance * Math.abs(p.forces().mx()));
      assertEquals(p.forces().mxy(), q.forces().mxy(), tolerance * Math.abs(p.forces().mxy()));
      assertEquals(p.forces().qy(), q.forces().qy(), tolerance * Math.abs(p.forces().qx()));
    }
  }

  @Test
  void a_panel_on_lines_is_the_same_alone_and_beside_a_frame() {
    Panel panel =
        top()
            .support(PanelSupport.knifeEdge(PanelLine.x(210)))
            .support(PanelSupport.pressing(PanelLine.x(1190)))
            .support(PanelSupport.elastic(PanelLine.y(570), 3))
            .build();
    PanelLoad load = PanelLoad.patch("top", 1290, 95, 60, 40, 850);
    PanelResult alone = PanelSolver.solve(panel, List.of(load));
    FrameModel post =
        FrameModel.builder()
            .node("foot", -400, 0, -700)
            .node("head", -400, 0, 0)
            .material("m", 11000, 690, 0)
            .section("s", rectangle(60, 80))
            .member("post", "foot", "head", "s", "m")
            .fixed("foot")
            .build();
    PanelFrameSolver.Result together = solve(post, panel, load);
    assertSame(alone, together.panels().get("top"), 1e-7);
    assertTrue(together.frame().result().equilibriumError() < 1e-9);
    assertEquals(
        alone.reactions().get(1).force(),
        together.panels().get("top").reactions().get(1).force(),
        1e-6);
  }

  private static FrameModelBuilder posts(PanelPlace place, double[][] at, double down) {
    FrameModelBuilder builder = FrameModel.builder();
    for (int k = 0; k < at.length; k++) {
      builder.node("p" + k, place.inSpace(at[k][0], at[k][1]).minus(place.normal().times(down)));
      builder.fixed("p" + k);
    }
    return builder;
  }

  @Test
  void a_panel_anyhow_in_space_answers_as_a_flat_one() {
    double[][] at = {{90, 70}, {1240, 70}, {1240, 520}, {90, 470}};
    Map<Direction, Link> all =
        Map.of(Direction.UX, Link.RIGID, Direction.UY, Link.RIGID, Direction.UZ, Link.RIGID);
    PanelLoad load = PanelLoad.patch("top", 700, 200, 90, 50, 1200);
    PanelResult[] results = new PanelResult[2];
    PanelPlace[] places = {
      PanelPlace.flat(new Vec3(10, 20, 800)),
      new PanelPlace(new Vec3(10, 20, 800), new Vec3(2, 1, 2), new Vec3(-2, 2, 1))
    };
    for (int k = 0; k < 2; k++) {
      PanelBuilder builder = top().place(places[k]);
      for (int n = 0; n < at.length; n++) {
        builder.tie(at[n][0], at[n][1], "p" + n, all);
      }
      PanelFrameSolver.Result result =
          solve(posts(places[k], at, 30).build(), builder.build(), load);
      assertTrue(result.frame().result().equilibriumError() < 1e-10);
      results[k] = result.panels().get("top");
    }
    assertSame(results[0], results[1], 1e-7);
  }

  @Test
  void a_corner_lifts_off_a_one_way_tie() {
    double[][] at = {{100, 80}, {1230, 80}, {1230, 490}, {100, 490}};
    PanelPlace place = PanelPlace.flat(new Vec3(0, 0, 850));
    PanelBuilder builder = top().place(place);
    for (int n = 0; n < 4; n++) {
      builder.tie(at[n][0], at[n][1], "p" + n, Map.of(Direction.UZ, Link.CONTACT));
    }
    PanelFrameSolver.Result result =
        solve(
            posts(place, at, 0).build(),
            builder.build(),
            PanelLoad.point("top", 1232, 200, 700),
            PanelLoad.pressure("top", 1e-5));
    List<PanelTieForce> ties = result.panels().get("top").ties();
    assertTrue(ties.get(0).open() ^ ties.get(3).open(), ties.toString());
    double sum = 0;
    for (PanelTieForce tie : ties) {
      assertTrue(tie.force() >= -1e-9, tie.toString());
      sum += tie.force();
    }
    assertEquals(700 + 1e-5 * 1330 * 570, sum, 1e-6);
  }

  @Test
  void a_load_outside_its_feet_tips_a_loose_top() {
    double[][] at = {{300, 80}, {1030, 80}, {1030, 490}, {300, 490}};
    PanelPlace place = PanelPlace.flat(Vec3.ZERO);
    PanelBuilder builder = top().place(place);
    for (int n = 0; n < 4; n++) {
      builder.tie(at[n][0], at[n][1], "p" + n, Map.of(Direction.UZ, Link.CONTACT));
    }
    PanelFrameSolver.Result result =
        solve(posts(place, at, 0).build(), builder.build(), PanelLoad.point("top", 1300, 200, 500));
    assertInstanceOf(Loose.class, result.frame());
    assertTrue(result.panels().isEmpty());
  }

  @Test
  void a_strip_bent_in_its_own_plane_is_a_deep_beam() {
    // Both short sides are held by rigid rows; the far row moves with one node, which is pushed.
    double length = 900;
    double depth = 120;
    PanelMaterial steel = PanelMaterial.isotropic(12600, 0.3, 0);
    PanelBuilder builder =
        Panel.builder("strip", length, depth, 25).material(steel).mesh(new PanelMesh.Even(30, 4));
    FrameModelBuilder frame = FrameModel.builder();
    Map<Direction, Link> row =
        Map.of(
            Direction.UX, Link.RIGID,
            Direction.UY, Link.RIGID,
            Direction.UZ, Link.RIGID,
            Direction.RX, Link.RIGID);
    frame.node("wall", 0, depth / 2, 0).fixed("wall");
    frame.node("tip", length, depth / 2, 0).fixed("tip", Direction.UZ, Direction.RY);
    for (int k = 0; k <= 24; k++) {
      builder.tie(0, k * depth / 24, "wall", row);
      builder.tie(length, k * depth / 24, "tip", row);
    }
    PanelFrameSolver.Result result =
        solve(frame.build(), builder.build(), Load.node("tip", 0, 1000, 0));
    double inertia = 25 * Math.pow(depth, 3) / 12;
    double g = 12600 / 2.6;
    double beam =
        1000 * Math.pow(length, 3) / (3 * 12600 * inertia)
            + 1000 * length / (5.0 / 6 * g * 25 * depth);
    assertEquals(beam, result.frame().result().displacement("tip")[1], 0.01 * beam);
    // The rotations about the normal follow: 3/2 of the chord, and the shear.
    double turn = 1000 * length * length / (2 * 12600 * inertia);
    assertEquals(turn, result.frame().result().displacement("tip")[5], 0.01 * turn);
  }

  @Test
  void a_top_screwed_to_a_rail_stiffens_it_as_a_composite_beam() {
    // Shear stiff and without Poisson's effect, so that the theory of composite beams is exact.
    PanelMaterial stiff = new PanelMaterial(12600, 12600, 2e5, 2e5, 2e5, 0, 0);
    double length = 1400;
    double width = 90;
    double h = 30;
    double gap = 45;
    PanelBuilder builder =
        Panel.builder("flange", length, width, h).material(stiff).mesh(new PanelMesh.Even(28, 2));
    FrameModelBuilder frame =
        FrameModel.builder().material("m", 12600, 2e5, 0).section("s", rectangle(40, 60));
    Map<Direction, Link> all =
        Map.of(
            Direction.UX, Link.RIGID,
            Direction.UY, Link.RIGID,
            Direction.UZ, Link.RIGID,
            Direction.RX, Link.RIGID,
            Direction.RZ, Link.RIGID);
    for (int k = 0; k <= 56; k++) {
      frame.node("n" + k, k * 25, width / 2, -gap);
      builder.tie(k * 25, width / 2, "n" + k, all);
    }
    for (int k = 0; k < 56; k++) {
      frame.member("r" + k, "n" + k, "n" + (k + 1), "s", "m");
    }
    frame.fixed("n0", Direction.UX, Direction.UY, Direction.UZ, Direction.RX);
    frame.fixed("n56", Direction.UY, Direction.UZ, Direction.RX);
    PanelFrameSolver.Result result =
        solve(frame.build(), builder.build(), Load.node("n28", 0, 0, -1500));
    double a1 = 40 * 60;
    double a2 = width * h;
    double own = 40 * Math.pow(60, 3) / 12 + width * Math.pow(h, 3) / 12;
    double composite = own + a1 * a2 / (a1 + a2) * gap * gap;
    double expected = 1500 * Math.pow(length, 3) / (48 * 12600 * composite);
    double found = -result.frame().result().displacement("n28")[2];
    assertEquals(expected, found, 0.015 * expected);
  }

  @Test
  void a_panel_weighs_what_its_volume_weighs() {
    double[][] at = {{100, 80}, {1230, 80}, {660, 490}};
    PanelPlace place = PanelPlace.flat(new Vec3(0, 0, 850));
    PanelBuilder builder = top().place(place);
    for (int n = 0; n < 3; n++) {
      builder.tie(at[n][0], at[n][1], "p" + n, Map.of(Direction.UZ, Link.elastic(400 + 90 * n)));
    }
    FrameModel model = posts(place, at, 0).build();
    PanelFrameSolver.Result result = solve(model, builder.build(), Load.selfWeight());
    double sum = 0;
    for (int n = 0; n < 3; n++) {
      sum += result.frame().result().reaction("p" + n)[2];
    }
    assertEquals(1.330 * 0.570 * 0.042 * 710 * 9.80665, sum, 1e-7);
    assertTrue(result.frame().result().equilibriumError() < 1e-10);
  }

  @Test
  void a_load_on_an_unknown_panel_is_refused() {
    double[][] at = {{100, 80}, {1230, 80}, {660, 490}};
    PanelPlace place = PanelPlace.flat(Vec3.ZERO);
    PanelBuilder builder = top();
    for (int n = 0; n < 3; n++) {
      builder.tie(at[n][0], at[n][1], "p" + n, Map.of(Direction.UZ, Link.RIGID));
    }
    FrameModel model = posts(place, at, 0).build();
    Panel panel = builder.build();
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> solve(model, panel, PanelLoad.pressure("shelf", 1)));
    assertTrue(refused.getMessage().contains("shelf"));
  }

  @Test
  void influence_of_a_load_on_a_panel_is_found_by_reciprocity_through_the_frame() {
    double[][] at = {{90, 70}, {1240, 70}, {1240, 520}, {90, 470}};
    PanelPlace place = PanelPlace.flat(new Vec3(0, 0, 850));
    PanelBuilder builder = top().place(place);
    FrameModelBuilder frame =
        FrameModel.builder().material("m", 11000, 690, 0).section("s", rectangle(70, 90));
    for (int n = 0; n < 4; n++) {
      Vec3 head = place.inSpace(at[n][0], at[n][1]).minus(new Vec3(0, 0, 21));
      frame.node("p" + n, head).node("f" + n, head.minus(new Vec3(0, 0, 800)));
      frame.member("leg" + n, "f" + n, "p" + n, "s", "m").fixed("f" + n);
      builder.tie(
          at[n][0],
          at[n][1],
          "p" + n,
          Map.of(
              Direction.UX, Link.RIGID,
              Direction.UY, Link.elastic(900),
              Direction.UZ, Link.RIGID));
    }
    PanelLoad load = PanelLoad.patch("top", 480, 333, 70, 30, 950);
    LoadCase loadCase = LoadCase.of("load", load);
    PanelFrameSolver solver =
        PanelFrameSolver.prepare(frame.build(), List.of(builder.build()), List.of(loadCase))
            .solver();
    PanelFrameSolver.Result result = solver.solve(loadCase);
    PanelField field = result.panels().get("top").field();
    Influence sag =
        solver.frame().influence(new Response.OnPanel("top", 410, 130, PanelQuantity.W));
    assertEquals(field.wAt(410, 130), sag.of(load), 1e-8);
    Influence moment =
        solver.frame().influence(new Response.OnPanel("top", 410, 130, PanelQuantity.MX));
    assertEquals(field.forcesAt(410, 130).mx(), moment.of(load), 1e-5);
    Influence foot = solver.frame().influence(new Response.Reaction("f2", Direction.UZ));
    assertEquals(result.frame().result().reaction("f2")[2], foot.of(load), 1e-6);
    assertTrue(result.frame().result().equilibriumError() < 1e-9);
  }

  @Test
  void a_panel_may_stand_without_any_frame() {
    Panel panel =
        top()
            .support(PanelSupport.knifeEdge(PanelLine.x(100)))
            .support(PanelSupport.knifeEdge(PanelLine.x(1200)))
            .build();
    PanelFrameSolver.Result result = solve(FrameModel.builder().build(), panel, Load.selfWeight());
    double weight = 1.330 * 0.570 * 0.042 * 710 * 9.80665;
    PanelResult own = result.panels().get("top");
    assertEquals(weight, own.reactions().get(0).force() + own.reactions().get(1).force(), 1e-6);
    assertTrue(own.equilibriumError() < 1e-9, "error " + own.equilibriumError());
  }

  /** A top pinned on the heads of four clamped legs, far stiffer in shear than in bending. */
  private static PanelFrameSolver table(LoadCase loads) {
    double[][] at = {{90, 70}, {1240, 70}, {1240, 500}, {90, 500}};
    PanelPlace place = PanelPlace.flat(new Vec3(0, 0, 850));
    PanelBuilder builder = top().place(place);
    CrossSection slender = new CrossSection(1200, 160_000, 90_000, 150_000, 1e9, 1e9);
    FrameModelBuilder frame =
        FrameModel.builder().material("m", 11000, 690, 0).section("s", slender);
    for (int n = 0; n < 4; n++) {
      Vec3 head = place.inSpace(at[n][0], at[n][1]);
      frame.node("p" + n, head).node("f" + n, head.minus(new Vec3(0, 0, 800)));
      frame.member("leg" + n, "f" + n, "p" + n, "s", "m").fixed("f" + n);
      builder.tie(
          at[n][0],
          at[n][1],
          "p" + n,
          Map.of(Direction.UX, Link.RIGID, Direction.UY, Link.RIGID, Direction.UZ, Link.RIGID));
    }
    return PanelFrameSolver.prepare(frame.build(), List.of(builder.build()), List.of(loads))
        .solver();
  }

  @Test
  void a_heavy_top_sways_farther_as_its_legs_lean_and_sags_as_before() {
    // Symmetric about both middle lines of its legs: each leg bears a quarter of top and load.
    LoadCase loads =
        LoadCase.of(
            "lean",
            PanelLoad.patch("top", 665, 285, 0, 0, 1600),
            Load.node("p0", 11, 0, 0),
            Load.node("p1", 11, 0, 0),
            Load.node("p2", 11, 0, 0),
            Load.node("p3", 11, 0, 0));
    PanelFrameSolver solver = table(loads);
    PanelFrameSolver.Result first = solver.solve(loads);
    PanelFrameSolver.SecondOrderAnswer second = solver.secondOrder(Combination.of(loads), 16);
    double k = Math.sqrt(400 / (11000 * 160_000.0));
    double cantilever = 11 / 400.0 * (Math.tan(k * 800) / k - 800);
    assertEquals(cantilever, second.frame().result().displacement("p1")[0], 2e-4 * cantilever);
    assertTrue(first.frame().result().displacement("p1")[0] < 0.95 * cantilever);
    PanelResult panel = second.panels().get("top");
    assertEquals(first.panels().get("top").wMin().value(), panel.wMin().value(), 2e-4);
    double ties =
        panel.ties().stream()
            .filter(tie -> tie.direction() == Direction.UZ)
            .mapToDouble(PanelTieForce::force)
            .sum();
    assertEquals(1600, ties, 1e-6);
    assertTrue(panel.equilibriumError() < 1e-9, "error " + panel.equilibriumError());
  }

  @Test
  void where_the_loads_are_light_both_orders_give_one_panel() {
    LoadCase loads =
        LoadCase.of(
            "light", PanelLoad.patch("top", 480, 333, 70, 30, 1e-5), Load.node("p2", 0, 1e-6, 0));
    PanelFrameSolver solver = table(loads);
    PanelResult first = solver.solve(loads).panels().get("top");
    PanelResult second = solver.secondOrder(Combination.of(loads), 3).panels().get("top");
    assertSame(first, second, 1e-6);
    assertEquals(first.meshError(), second.meshError(), 1e-6);
  }

  @Test
  void legs_that_buckle_leave_a_panel_without_second_order_results() {
    LoadCase loads = LoadCase.of("heavy", PanelLoad.pressure("top", 0.04));
    PanelFrameSolver.SecondOrderAnswer answer = table(loads).secondOrder(Combination.of(loads), 8);
    assertInstanceOf(SecondOrder.NoAnswer.class, answer.frame());
    assertTrue(answer.panels().isEmpty());
  }

  @Test
  void cases_on_panels_solved_together_get_the_same_bits_as_one_at_a_time() {
    List<LoadCase> cases = new ArrayList<>();
    for (int c = 0; c < 5; c++) {
      cases.add(
          LoadCase.of(
              "place " + c,
              PanelLoad.patch("top", 130 + 210 * c, 95 + 61 * c, 40, 25, 300 + 41 * c),
              Load.node("p" + c % 4, 13, -5, 0)));
    }
    PreparedFrame frame = table(cases.get(0)).frame();
    List<Outcome> together = frame.solveAll(cases);
    for (int c = 0; c < cases.size(); c++) {
      assertArrayEquals(
          frame.solve(cases.get(c)).result().displacements(),
          together.get(c).result().displacements());
    }
  }
}
