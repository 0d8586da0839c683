package org.stoutwork.assembly;

import java.util.List;
import java.util.function.Function;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.bench.Bench;

/**
 * A bench as a frame, with the names that lead back from members to parts.
 *
 * @param bench it stands for
 * @param level of the joints' stiffness
 * @param frame nodes, members, springs
 * @param parts legs, rails, feet, stretchers, then the strips of the top
 * @param joints where a part ends in another
 * @param grid of the top
 * @param feet nodes that stand on the floor
 * @param bearings members that pass the top's weight to rails and stretchers
 */
public record BenchModel(
    Bench bench,
    JointLevel level,
    FrameModel frame,
    List<Part> parts,
    List<JointSpot> joints,
    TopGrid grid,
    List<String> feet,
    List<String> bearings) {

  /** Keeps its own copies. */
  public BenchModel {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    feet = List.copyOf(feet);
    bearings = List.copyOf(bearings);
  }

  /** Builds the frame of a bench with its joints at one level of their stiffness. */
  public static BenchModel of(
      Bench bench, Function<String, FrameTimber> timbers, JointLevel level, FloorContact floor) {
    return new FrameAssembly(bench, timbers, level, level::of, floor).build();
  }

  /**
   * The same with joints at their softest, where these leave the frame loose: springs that are
   * nought there get a small part of their mean. What hangs on such a spring then moves far more
   * than with joints at their mean; all else hardly changes.
   */
  public static BenchModel propped(
      Bench bench, Function<String, FrameTimber> timbers, FloorContact floor) {
    return new FrameAssembly(bench, timbers, JointLevel.LOW, Springs::propped, floor).build();
  }
}
