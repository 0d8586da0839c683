package org.stoutwork.analysis.solve;

import java.util.HashMap;
import java.util.Map;
import org.stoutwork.analysis.element.PlateBending;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelSection;

/**
 * The bending elements of a grid. Cells of equal sides and section share their matrices.
 *
 * <p>A thin panel is given a transverse shear stiffness of 250 times its bending stiffness over the
 * mean area of a cell. The element does not lock, so this only adds a small shear deformation,
 * which falls with the square of the size of the cells just as the other errors do, and which
 * Richardson's extrapolation therefore takes out with them; the equations stay well conditioned.
 */
final class PanelElements {
  private static final double THIN = 250;

  private final PanelGrid grid;
  private final Matrices[][] cells;

  /** Stiffness and the rows that give the forces at the middle. */
  static final class Matrices {
    private final double[][] stiffness;
    private final double[][] forces;

    Matrices(double[][] stiffness, double[][] forces) {
      this.stiffness = stiffness;
      this.forces = forces;
    }

    double[][] stiffness() {
      return stiffness;
    }

    double[][] forces() {
      return forces;
    }
  }

  private record Key(double a, double b, PanelSection section) {}

  PanelElements(PanelGrid grid) {
    this.grid = grid;
    this.cells = new Matrices[grid.nx() - 1][grid.ny() - 1];
    Map<Key, Matrices> made = new HashMap<>();
    for (int i = 0; i < cells.length; i++) {
      for (int j = 0; j < cells[i].length; j++) {
        if (grid.has(i, j)) {
          double a = grid.x(i + 1) - grid.x(i);
          double b = grid.y(j + 1) - grid.y(j);
          PanelSection section = effective(grid, grid.section(i, j));
          cells[i][j] = made.computeIfAbsent(new Key(a, b, section), PanelElements::make);
        }
      }
    }
  }

  /** The section an element gets: the given one, or one stiff in shear for a thin panel. */
  static PanelSection effective(PanelGrid grid, PanelSection section) {
    Panel panel = grid.panel();
    if (!panel.thin()) {
      return section;
    }
    double cells = (grid.nx() - 1.0) * (grid.ny() - 1.0);
    double area = panel.length() * panel.width() / cells;
    double shear = THIN * Math.max(section.d11(), section.d22()) / area;
    return section.withShear(shear, shear);
  }

  private static Matrices make(Key key) {
    PlateBending element = new PlateBending(key.a(), key.b(), key.section());
    double[] flat = element.stiffness();
    double[][] k = new double[PlateBending.SIZE][];
    for (int r = 0; r < PlateBending.SIZE; r++) {
      k[r] = java.util.Arrays.copyOfRange(flat, r * PlateBending.SIZE, (r + 1) * PlateBending.SIZE);
    }
    return new Matrices(k, element.forcesAtMiddle());
  }

  /** Matrices of a cell, null for an opening. */
  Matrices of(int i, int j) {
    return cells[i][j];
  }

  /** The twelve unknowns of a cell among three a node. */
  int[] unknowns(int i, int j) {
    int[] corners = grid.corners(i, j);
    int[] unknowns = new int[PlateBending.SIZE];
    for (int n = 0; n < 4; n++) {
      for (int d = 0; d < 3; d++) {
        unknowns[3 * n + d] = 3 * corners[n] + d;
      }
    }
    return unknowns;
  }

  /** Forces on all unknowns that the displacements {@code u} call for. */
  double[] forces(double[] u) {
    double[] f = new double[u.length];
    for (int i = 0; i < cells.length; i++) {
      for (int j = 0; j < cells[i].length; j++) {
        if (cells[i][j] != null) {
          int[] unknowns = unknowns(i, j);
          double[][] k = cells[i][j].stiffness();
          for (int r = 0; r < unknowns.length; r++) {
            double sum = 0;
            for (int c = 0; c < unknowns.length; c++) {
              sum += k[r][c] * u[unknowns[c]];
            }
            f[unknowns[r]] += sum;
          }
        }
      }
    }
    return f;
  }
}
