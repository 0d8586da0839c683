package org.stoutwork.joint.advice;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Joint;

/**
 * The dowels a joiner would choose for a butt joint of which nothing else was said: of a size that
 * is sold, about a third of the thinner piece thick, and thinner where the depth of the rail asks
 * for it, so that they keep their distances.
 *
 * @param members the pieces
 * @param gravity of the rail's wood, on which the distances depend
 * @param hardwood whether the rail's wood is one
 * @param facing whether dowels of another piece come into the post from its other side
 */
public record DowelProportions(
    Joint.Members members, double gravity, boolean hardwood, boolean facing) {

  /** Diameters that are sold, mm; common practice, no source. */
  private static final double[] SOLD = {6, 8, 10, 12, 14, 16, 18, 20};

  /** Between dowels, in diameters; no less than the distances of any wood. */
  private static final double SPACING = 3;

  /** Length in each piece, in diameters. */
  private static final double LENGTH = 4;

  /** Wood left behind a dowel, mm. */
  private static final double BEHIND = 5;

  /** Part of a post that a dowel takes where another faces it. */
  private static final double FACING = 0.45;

  /** The usual dowels; two, or as many as the depth has room for. */
  public DowelledButt usual() {
    return usual(Optional.empty());
  }

  /** The usual dowels where their number is given. */
  public DowelledButt usual(Optional<Integer> count) {
    return of(diameter(count.orElse(2)), count);
  }

  /** Dowels of one diameter, in the usual number or in the given one, their places and depths. */
  public DowelledButt of(double diameter, Optional<Integer> given) {
    double edge = edge(diameter, given.orElse(2));
    double between = members.railDepth() - 2 * edge;
    int most = (int) Math.max(2, Math.min(8, Math.floor(between / (SPACING * diameter)) + 1));
    int count = given.orElse(most);
    double length = length(diameter);
    return new DowelledButt(
        new Peg(diameter, TenonProportions.BEECH),
        count,
        length,
        length,
        between / (count - 1),
        edge);
  }

  /** Alike in both pieces, for a maker says one length over all; whole millimetres over all. */
  private double length(double diameter) {
    double most = facing ? Math.floor(FACING * members.postDepth()) : members.postDepth() - BEHIND;
    return Math.floor(2 * Math.min(LENGTH * diameter, most)) / 2;
  }

  /** The thickest that is sold, from about a third of the thinner piece, if so many fit; mm. */
  private double diameter(int count) {
    double b = Math.min(members.railThickness(), members.postThickness());
    double third = b / 3;
    double wanted =
        DoubleStream.of(SOLD)
            .boxed()
            .min(Comparator.comparingDouble(d -> Math.abs(d - third)))
            .orElseThrow();
    return DoubleStream.of(SOLD)
        .filter(d -> d <= wanted && d <= b / 2 && fits(d, count))
        .max()
        .orElse(Math.max(1, Math.floor(Math.min(third, members.railDepth() / 6))));
  }

  private boolean fits(double diameter, int count) {
    return 2 * leastEdge(diameter) + (count - 1) * SPACING * diameter <= members.railDepth();
  }

  private double leastEdge(double diameter) {
    return Distances.peg(diameter, gravity, hardwood).edge();
  }

  /**
   * As its distance asks and not less than a fifth of the depth; closer where a diameter that was
   * given does not fit.
   */
  private double edge(double diameter, int count) {
    double depth = members.railDepth();
    double left = (depth - (count - 1) * SPACING * diameter) / 2;
    double least = leastEdge(diameter);
    return fits(diameter, count)
        ? Math.max(least, Math.min(0.2 * depth, Math.floor(left)))
        : Math.min(Math.max(2.5 * diameter, 0.2 * depth), 0.35 * depth);
  }
}
