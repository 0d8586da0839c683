package org.stoutwork.analysis.solve;

import java.util.Arrays;
import java.util.Map;

/**
 * A buckling mode or a natural vibration: how the nodes move relative to each other, the largest
 * translation (or rotation at the characteristic length) being 1.
 */
public final class Mode {
  private final double value;
  private final Map<String, Integer> vertices;
  private final double[] shape;

  Mode(double value, Map<String, Integer> vertices, double[] shape) {
    this.value = value;
    this.vertices = vertices;
    this.shape = shape;
  }

  /** Multiplier of all loads (buckling) or frequency in Hz (vibration). */
  public double value() {
    return value;
  }

  /** Relative motion of a node, ux uy uz rx ry rz, global axes. */
  public double[] motion(String node) {
    Integer vertex = vertices.get(node);
    if (vertex == null) {
      throw new IllegalArgumentException("there is no node '" + node + "'");
    }
    return Arrays.copyOfRange(shape, 6 * vertex, 6 * vertex + 6);
  }
}
