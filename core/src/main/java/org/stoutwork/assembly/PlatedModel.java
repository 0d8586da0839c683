package org.stoutwork.assembly;

import java.util.List;
import java.util.function.Function;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.bench.Bench;

/**
 * A bench whose top is a plate that rests on the frame in the same places as the grillage of {@link
 * BenchModel}.
 *
 * @param bench it stands for
 * @param level of the joints' stiffness
 * @param frame nodes, members, springs of everything below the top
 * @param parts legs, rails, feet, stretchers
 * @param grid places of the top by which it is loaded and asked
 * @param top the plate with its ties to the frame
 * @param feet nodes that stand on the floor
 */
public record PlatedModel(
    Bench bench,
    JointLevel level,
    FrameModel frame,
    List<Part> parts,
    TopGrid grid,
    Panel top,
    List<String> feet) {

  /** Keeps its own copies. */
  public PlatedModel {
    parts = List.copyOf(parts);
    feet = List.copyOf(feet);
  }

  /** Builds frame and plate of a bench with its joints at one level of their stiffness. */
  public static PlatedModel of(
      Bench bench,
      Function<String, FrameTimber> timbers,
      JointLevel level,
      FloorContact floor,
      TopContact contact) {
    return new FrameAssembly(bench, timbers, level, level::of, floor).buildPlated(contact);
  }

  /** The same with joints at their softest, as {@link BenchModel#propped}. */
  public static PlatedModel propped(
      Bench bench, Function<String, FrameTimber> timbers, FloorContact floor, TopContact contact) {
    return new FrameAssembly(bench, timbers, JointLevel.LOW, Springs::propped, floor)
        .buildPlated(contact);
  }

  /**
   * The plate on a coarser mesh, with lines through the places of the grid alone: its difference
   * from {@link #top()} tells how much the mesh counts.
   */
  public Panel coarseTop() {
    return top.toBuilder().mesh(new PanelMesh.Lines(grid.stations(), grid.lines())).build();
  }
}
