package org.stoutwork.reference.frames;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;

/**
 * Frames with end springs, releases, rigid arms, rolled members, springs to the ground and
 * settlements against {@link DenseFrame}, under forces and moments on every node at once.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DenseFrameTest {
  private double largest;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "F05_portal_semi_rigid_sway",
        "F08_two_rail_racking_semi_rigid",
        "F09_space_bench_base_rigid",
        "F10_space_bench_semi_rigid",
        "F11_braced_releases",
        "F12_rigid_offsets",
        "F13_settlement",
        "F14_splayed_gable",
        "F16_skew_roll_axes"
      })
  void nodes_move_as_the_dense_system_says(String name) {
    FrameModel model = onSprings(FrameFile.read("frames/" + name + ".json").model());
    List<String> nodes = new ArrayList<>(model.nodes().keySet());
    double[] forces = new double[6 * nodes.size()];
    List<Load> loads = new ArrayList<>();
    for (int v = 0; v < nodes.size(); v++) {
      for (int i = 0; i < 6; i++) {
        double uneven = Math.sin(1 + 2.3 * (6 * v + i));
        forces[6 * v + i] = uneven * (i < 3 ? 410 : 73_000);
      }
      Vec3 force = Vec3.of(forces, 6 * v);
      loads.add(new Load.OnNode(nodes.get(v), force, Vec3.of(forces, 6 * v + 3)));
    }
    double[] expected = new DenseFrame(model).solve(forces);
    FrameResult found =
        FrameSolver.prepare(model).prepared().solve(new LoadCase("all", loads)).result();
    double[] size = new double[2];
    for (int i = 0; i < expected.length; i++) {
      int kind = i % 6 / 3;
      size[kind] = Math.max(size[kind], Math.abs(expected[i]));
    }
    assertTrue(size[0] > 1e-2 && size[1] > 1e-6, "the loads move the frame");
    for (int i = 0; i < expected.length; i++) {
      double u = found.displacement(nodes.get(i / 6))[i % 6];
      double difference = Math.abs(u - expected[i]) / size[i % 6 / 3];
      largest = Math.max(largest, difference);
      assertEquals(0, difference, 1e-9, nodes.get(i / 6) + " " + i % 6);
    }
  }

  /** The first support's fixed directions on springs instead, each of a stiffness of its own. */
  private static FrameModel onSprings(FrameModel model) {
    Map<String, Map<Direction, Restraint>> supports = new LinkedHashMap<>(model.supports());
    String first = supports.keySet().iterator().next();
    Map<Direction, Restraint> held = new LinkedHashMap<>();
    supports
        .get(first)
        .forEach(
            (way, how) -> {
              double k = (way.isRotation() ? 6.1e8 : 2.3e3) * (1 + 0.37 * way.index());
              held.put(way, how instanceof Restraint.Fixed ? Restraint.elastic(k) : how);
            });
    supports.put(first, held);
    return model.withSupports(supports);
  }

  @AfterAll
  void tell() {
    System.out.printf(Locale.ROOT, "LARGEST frames against dense assembly: %.1e%n", largest);
  }
}
