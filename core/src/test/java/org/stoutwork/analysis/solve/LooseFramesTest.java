package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/** Frames without resistance, or with next to none: refused by name, or solved right. */
class LooseFramesTest {
  private static final CrossSection SECTION = new CrossSection(3600, 1.1e6, 1.3e6, 2e6, 3000, 3000);

  private static FrameModelBuilder post() {
    return FrameModel.builder()
        .material("m", 11000, 700, 500)
        .section("s", SECTION)
        .node("foot", 0, 0, 0)
        .node("head", 120, 40, 900)
        .member("post", "foot", "head", "s", "m");
  }

  @Test
  void a_frame_without_supports_is_loose() {
    Loose loose = assertInstanceOf(Loose.class, FrameSolver.prepare(post().build()));
    assertTrue(loose.message().contains(loose.part()));
    assertTrue(loose.message().contains("add a support"));
  }

  @Test
  void a_post_that_can_turn_about_its_foot_is_loose_at_its_head() {
    FrameModel model =
        post()
            .fixed("foot", Direction.UX, Direction.UY, Direction.UZ, Direction.RZ, Direction.RX)
            .build();
    Loose loose = assertInstanceOf(Loose.class, FrameSolver.prepare(model));
    assertEquals("head", loose.part());
    assertEquals("along x", loose.direction());
  }

  @Test
  void a_node_that_nothing_touches_is_named() {
    FrameModel model = post().fixed("foot").node("stray", 5, 5, 5).build();
    assertEquals("stray", assertInstanceOf(Loose.class, FrameSolver.prepare(model)).part());
  }

  @Test
  void a_member_free_to_spin_about_itself_is_named() {
    FrameModel model =
        FrameModel.builder()
            .material("m", 11000, 700, 500)
            .section("s", SECTION)
            .node("a", 0, 0, 0)
            .node("b", 700, 30, 10)
            .member(
                "brace",
                "a",
                "b",
                "s",
                "m",
                0,
                MemberEnd.RIGID.free(Direction.RX),
                MemberEnd.RIGID.free(Direction.RX))
            .fixed("a")
            .fixed("b")
            .build();
    Loose loose = assertInstanceOf(Loose.class, FrameSolver.prepare(model));
    assertEquals("brace", loose.part());
    assertTrue(loose.direction().contains("own axis"));
  }

  @Test
  void a_nearly_loose_post_is_refused_by_name() {
    // A rotational spring 1e-12 of the post's own stiffness.
    double own = 11000 * 1.1e6 / 900;
    FrameModel model =
        post()
            .fixed("foot", Direction.UX, Direction.UY, Direction.UZ, Direction.RX, Direction.RZ)
            .support("foot", Direction.RY, Restraint.elastic(1e-12 * own))
            .build();
    Loose loose = assertInstanceOf(Loose.class, FrameSolver.prepare(model));
    assertEquals("head", loose.part());
    assertEquals("along x", loose.direction());
  }

  @Test
  void a_spring_a_billion_times_softer_than_the_post_is_solved_right_or_refused() {
    double k = 1e-9 * 11000 * 1.1e6 / 900;
    FrameModel model =
        FrameModel.builder()
            .material("m", 11000, 700, 500)
            .section("s", SECTION)
            .node("foot", 0, 0, 0)
            .node("head", 900, 0, 0)
            .member("post", "foot", "head", "s", "m")
            .fixed("foot", Direction.UX, Direction.UY, Direction.UZ, Direction.RX, Direction.RZ)
            .support("foot", Direction.RY, Restraint.elastic(k))
            .build();
    Preparation preparation = FrameSolver.prepare(model);
    if (preparation instanceof PreparedFrame frame) {
      double[] u =
          frame
              .solve(LoadCase.of("tip", Load.node("head", 0, 0, -1e-6)))
              .result()
              .displacement("head");
      assertEquals(-1e-6 * 900.0 * 900.0 / k, u[2], 1e-4 * 1e-6 * 900.0 * 900.0 / k);
    } else {
      assertEquals("head", ((Loose) preparation).part());
    }
  }

  @Test
  void joints_from_nearly_free_to_nearly_rigid_give_the_exact_end_moment() {
    // Propped by a spring joint: M = qL²/8 / (1 + 3EI/(kL)) at the spring end, other end hinged.
    double l = 1300;
    double ei = 11000 * 1.1e6;
    for (int power = -9; power <= 9; power++) {
      double k = ei / l * Math.pow(10, power);
      FrameModel model =
          FrameModel.builder()
              .material("m", 11000, 700, 500)
              .section("s", new CrossSection(3600, 1.1e6, 1.3e6, 2e6, 0, 0))
              .node("a", 0, 0, 0)
              .node("b", l, 0, 0)
              .member(
                  "beam",
                  "a",
                  "b",
                  "s",
                  "m",
                  0,
                  MemberEnd.RIGID.spring(Direction.RY, k),
                  MemberEnd.RIGID)
              .fixed("a")
              .fixed("b", Direction.UX, Direction.UY, Direction.UZ, Direction.RX, Direction.RZ)
              .build();
      FrameResult result =
          FrameSolver.prepare(model)
              .prepared()
              .solve(LoadCase.of("even", Load.line("beam", 0, 0, -2)))
              .result();
      double expected = 2 * l * l / 8 / (1 + 3 * ei / (k * l));
      assertEquals(-expected, result.member("beam").start()[4], 1e-9 * expected, "10^" + power);
      double turn = result.member("beam").deflectionAt(0)[4];
      assertEquals(expected / k, turn, 1e-9 * expected / k, "10^" + power);
    }
  }

  /**
   * A cantilever of two lengths, one a million or a billion times stiffer than the other. Only a
   * stiff arm on a base a billion times softer may be refused, as good as loose.
   */
  @Test
  void lengths_that_differ_a_billionfold_in_stiffness_are_solved_right_or_refused() {
    double l = 640;
    double f = 310;
    for (double ratio : new double[] {1e-9, 1e-6, 1e6, 1e9}) {
      FrameModel model =
          FrameModel.builder()
              .material("m", 11000, 700, 500)
              .material("other", 11000 * ratio, 700 * ratio, 500)
              .section("s", new CrossSection(3600, 1.1e6, 1.3e6, 2e6, 0, 0))
              .node("foot", 0, 0, 0)
              .node("knee", l, 0, 0)
              .node("tip", 2 * l, 0, 0)
              .member("lower", "foot", "knee", "s", "m")
              .member("upper", "knee", "tip", "s", "other")
              .fixed("foot")
              .build();
      Preparation preparation = FrameSolver.prepare(model);
      if (preparation instanceof Loose loose) {
        assertEquals(1e9, ratio);
        assertEquals("tip", loose.part());
        continue;
      }
      FrameResult result =
          preparation.prepared().solve(LoadCase.of("tip", Load.node("tip", 7, 0, -f))).result();
      double ei = 11000 * 1.1e6;
      double cube = f * l * l * l / ei;
      // Two equal lengths: the outer one bends by 1/3, the inner one under F and F l by 1/3 + 1/2,
      // and turns by 1/2 + 1, which carries the outer one along.
      double expected = cube * (1 / 3.0 / ratio + 1 / 3.0 + 1 / 2.0 + 1 / 2.0 + 1);
      double sink = -result.displacement("tip")[2];
      assertEquals(expected, sink, 1e-6 * expected, "ratio " + ratio);
      double longer = 7 * l / (11000.0 * 3600) * (1 + 1 / ratio);
      assertEquals(longer, result.displacement("tip")[0], 1e-6 * longer, "ratio " + ratio);
      assertEquals(2 * f * l, Math.abs(result.reaction("foot")[4]), 1e-6 * f * l, "ratio " + ratio);
      assertTrue(result.equilibriumError() < 1e-6, "unbalanced " + result.equilibriumError());
    }
  }

  @Test
  void contradicting_settlements_of_tied_nodes_are_refused() {
    FrameModel model =
        post()
            .node("other", 120, 40, 900)
            .tie("bond", "head", "other", Map.of(Direction.UZ, Link.RIGID))
            .fixed("foot")
            .support("head", Direction.UZ, Restraint.prescribed(1))
            .support("other", Direction.UZ, Restraint.prescribed(2))
            .fixed("other", Direction.UX, Direction.UY, Direction.RX, Direction.RY, Direction.RZ)
            .build();
    Loose refused = assertInstanceOf(Loose.class, FrameSolver.prepare(model));
    assertTrue(refused.message().contains("contradict"));
  }

  @Test
  void a_bench_lifted_by_its_load_is_an_answer_that_names_it() {
    FrameModel model =
        post()
            .fixed("foot", Direction.UX, Direction.UY, Direction.RX, Direction.RY, Direction.RZ)
            .support("foot", Direction.UZ, Restraint.COMPRESSION_ONLY)
            .build();
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    Loose lifted =
        assertInstanceOf(Loose.class, frame.solve(LoadCase.of("up", Load.node("head", 0, 0, 70))));
    assertEquals("along z", lifted.direction());
    assertTrue(lifted.message().contains("lifts"));
    FrameResult pressed = frame.solve(LoadCase.of("down", Load.node("head", 0, 0, -70))).result();
    assertEquals(70, pressed.reaction("foot")[2], 1e-9);
  }

  @Test
  void a_tie_with_arms_keeps_the_frame_in_equilibrium() {
    FrameModel model =
        post()
            .node("plate", 160, -20, 960)
            .node("end", 800, 100, 960)
            .member("arm", "plate", "end", "s", "m")
            .tie(
                new org.stoutwork.analysis.model.Tie(
                    "joint",
                    "head",
                    "plate",
                    new Vec3(130, 0, 930),
                    Map.of(
                        Direction.UX,
                        Link.RIGID,
                        Direction.UY,
                        Link.elastic(4000),
                        Direction.UZ,
                        Link.RIGID,
                        Direction.RX,
                        Link.elastic(3e7),
                        Direction.RY,
                        Link.elastic(5e7),
                        Direction.RZ,
                        Link.RIGID)))
            .fixed("foot")
            .build();
    FrameResult result =
        FrameSolver.prepare(model)
            .prepared()
            .solve(
                LoadCase.of(
                    "tip",
                    new Load.OnNode("end", new Vec3(50, -70, -300), new Vec3(1e4, 2e4, 3e4))))
            .result();
    assertTrue(result.equilibriumError() < 1e-12);
    assertEquals(300, result.reaction("foot")[2], 1e-8);
    // Both sides of the rigid directions move together at the place of the tie.
    Vec3 lower = at(result.displacement("head"), new Vec3(10, -40, 30));
    Vec3 upper = at(result.displacement("plate"), new Vec3(-30, 20, -30));
    assertEquals(lower.x(), upper.x(), 1e-12);
    assertEquals(lower.z(), upper.z(), 1e-12);
    assertTrue(Math.abs(lower.y() - upper.y()) > 1e-3);
  }

  private static Vec3 at(double[] u, Vec3 arm) {
    return Vec3.of(u, 0).plus(Vec3.of(u, 3).cross(arm));
  }

  /**
   * Beyond the second foot a load tips the beam; what holds it there is so soft that it would turn
   * by many rounds first, and its gaps would drown in rounding.
   */
  @Test
  void a_beam_tipping_against_next_to_nothing_lifts() {
    FrameModel model =
        FrameModel.builder()
            .material("m", 11000, 700, 0)
            .section("s", SECTION)
            .node("left", 0, 0, 0)
            .node("right", 730, 0, 0)
            .node("tip", 1010, 0, 0)
            .member("beam", "left", "right", "s", "m")
            .member("end", "right", "tip", "s", "m")
            .fixed("left", Direction.UY)
            .support("left", Direction.UZ, Restraint.COMPRESSION_ONLY)
            .fixed("right", Direction.UX, Direction.UY, Direction.RX)
            .support("right", Direction.UZ, Restraint.COMPRESSION_ONLY)
            .support("right", Direction.RY, Restraint.elastic(2e-2))
            .build();
    PreparedFrame frame = FrameSolver.prepare(model).prepared();
    Outcome tipped = frame.solve(LoadCase.of("tip", Load.node("tip", 0, 0, -640)));
    Loose loose = assertInstanceOf(Loose.class, tipped);
    assertTrue(loose.message().contains("lifts or tips"), loose.message());
    Outcome pressed = frame.solve(LoadCase.of("press", Load.node("right", 0, 0, -640)));
    assertInstanceOf(FrameResult.class, pressed);
  }
}
