package org.stoutwork.analysis.element;

import java.util.Arrays;
import org.stoutwork.analysis.model.PanelPlace;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.analysis.model.Vec3;

/**
 * A flat rectangular element with six unknowns a corner: {@link PlateBending} and {@link
 * PlateMembrane} side by side, turned into global axes.
 */
public final class PlateShell implements Element, Massive {
  private static final int SIZE = 24;
  private static final int[] BENDING = {2, 3, 4};
  private static final int[] MEMBRANE = {0, 1, 5};

  private final String part;
  private final int[] unknowns;
  private final Cell cell;

  /** What elements of equal size, section and place share. */
  public static final class Cell {
    private final double a;
    private final double b;
    private final PanelSection section;
    private final PanelPlace place;
    private final double[] stiffness;

    /** A cell with sides a and b, mm. */
    public Cell(double a, double b, PanelSection section, PanelPlace place) {
      this.a = a;
      this.b = b;
      this.section = section;
      this.place = place;
      this.stiffness = matrix(a, b, section, place);
    }
  }

  /**
   * Makes the element at four vertices.
   *
   * @param part the panel's name
   * @param vertices corners (0,0), (a,0), (a,b), (0,b)
   * @param cell size, section and place
   */
  public PlateShell(String part, int[] vertices, Cell cell) {
    this.part = part;
    this.cell = cell;
    this.unknowns = new int[SIZE];
    for (int n = 0; n < 4; n++) {
      for (int d = 0; d < 6; d++) {
        unknowns[6 * n + d] = 6 * vertices[n] + d;
      }
    }
  }

  @Override
  public void addForces(double[][] u, double[][] f, int n) {
    double[] force = new double[n];
    for (int i = 0; i < SIZE; i++) {
      Arrays.fill(force, 0);
      for (int j = 0; j < SIZE; j++) {
        Rows.add(force, n, cell.stiffness[i * SIZE + j], u[unknowns[j]]);
      }
      Rows.add(f[unknowns[i]], n, 1, force);
    }
  }

  private static double[] matrix(double a, double b, PanelSection section, PanelPlace place) {
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
    return cell.stiffness;
  }

  /**
   * Consistent mass of the bilinear displacements; turning about axes in the plane counts with the
   * radius of gyration of a solid section, √(D66 / C66).
   */
  @Override
  public double[] mass(boolean rotary) {
    double perArea = cell.section.mass() * 1e-9;
    double radius2 = rotary ? cell.section.d66() / cell.section.c66() : 0;
    double[] n = cell.place.normal().toArray();
    double[] m = new double[SIZE * SIZE];
    for (int p = 0; p < 4; p++) {
      for (int q = 0; q < 4; q++) {
        double both = perArea * cell.a * cell.b * overlap(p, q);
        for (int d = 0; d < 3; d++) {
          m[(6 * p + d) * SIZE + 6 * q + d] = both;
          for (int e = 0; e < 3; e++) {
            double inPlane = (d == e ? 1 : 0) - n[d] * n[e];
            m[(6 * p + 3 + d) * SIZE + 6 * q + 3 + e] = both * radius2 * inPlane;
          }
        }
      }
    }
    return m;
  }

  /** Mean over the rectangle of the product of two bilinear shapes: 1/9, 1/18 or 1/36. */
  private static double overlap(int p, int q) {
    int apart = Math.abs(p - q);
    return apart == 0 ? 1.0 / 9 : apart == 2 ? 1.0 / 36 : 1.0 / 18;
  }
}
