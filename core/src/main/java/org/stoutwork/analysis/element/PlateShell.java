package org.stoutwork.analysis.element;

import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.Vec3;

/**
 * A flat rectangular element with six unknowns a corner: {@link PlateBending} and {@link
 * PlateMembrane} side by side, turned into global axes.
 */
public final class PlateShell implements Element {
  private static final int SIZE = 24;
  private static final int[] BENDING = {2, 3, 4};
  private static final int[] MEMBRANE = {0, 1, 5};

  private final String part;
  private final int[] unknowns;
  private final double[] stiffness;

  /**
   * Makes the element at four vertices.
   *
   * @param part the panel's name
   * @param vertices corners (0,0), (a,0), (a,b), (0,b)
   * @param stiffness as {@link #matrix} makes it; elements of equal size and section may share it
   */
  public PlateShell(String part, int[] vertices, double[] stiffness) {
    this.part = part;
    this.stiffness = stiffness;
    this.unknowns = new int[SIZE];
    for (int n = 0; n < 4; n++) {
      for (int d = 0; d < 6; d++) {
        unknowns[6 * n + d] = 6 * vertices[n] + d;
      }
    }
  }

  /** Stiffness in global axes of a cell with sides a and b (mm). */
  public static double[] matrix(double a, double b, PanelSection section, PanelPlace place) {
    double[] local = new double[SIZE * SIZE];
    spread(local, new PlateBending(a, b, section).stiffness(), BENDING);
    spread(local, new PlateMembrane(a, b, section).stiffness(), MEMBRANE);
    return turned(local, place);
  }

  private static void spread(double[] local, double[] part, int[] directions) {
    for (int r = 0; r < 12; r++) {
      for (int c = 0; c < 12; c++) {
        int row = 6 * (r / 3) + directions[r % 3];
        int column = 6 * (c / 3) + directions[c % 3];
        local[row * SIZE + column] += part[r * 12 + c];
      }
    }
  }

  /** Each block of three times the rotation from both sides. */
  private static double[] turned(double[] local, PanelPlace place) {
    double[][] axes = axes(place);
    double[] half = new double[SIZE * SIZE];
    double[] global = new double[SIZE * SIZE];
    for (int r = 0; r < SIZE; r++) {
      for (int c = 0; c < SIZE; c++) {
        int block = 3 * (c / 3);
        for (int k = 0; k < 3; k++) {
          half[r * SIZE + c] += local[r * SIZE + block + k] * axes[k][c % 3];
        }
      }
    }
    for (int r = 0; r < SIZE; r++) {
      int block = 3 * (r / 3);
      for (int c = 0; c < SIZE; c++) {
        for (int k = 0; k < 3; k++) {
          global[r * SIZE + c] += axes[k][r % 3] * half[(block + k) * SIZE + c];
        }
      }
    }
    return global;
  }

  private static double[][] axes(PanelPlace place) {
    Vec3 normal = place.normal();
    return new double[][] {place.along().toArray(), place.across().toArray(), normal.toArray()};
  }

  @Override
  public String part() {
    return part;
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  @Override
  public double[] stiffness() {
    return stiffness;
  }
}
