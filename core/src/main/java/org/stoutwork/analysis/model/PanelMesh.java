package org.stoutwork.analysis.model;

import java.util.List;

/** How finely a panel is divided. Lines through supports and ties are always added. */
public sealed interface PanelMesh {
  /**
   * Chosen by the program: finer at edges, supports and small loads.
   *
   * @param divisions elements along the longer side of the coarser of the two meshes, away from all
   *     that asks for more; 4 to 200
   */
  record Auto(int divisions) implements PanelMesh {
    /** Checks the range. */
    public Auto {
      range("divisions of a panel", divisions, 4, 200);
    }
  }

  /**
   * Even divisions, at least so many; the second mesh has half the size.
   *
   * @param nx elements along, 2 to 200
   * @param ny elements across, 2 to 200
   */
  record Even(int nx, int ny) implements PanelMesh {
    /** Checks the range. */
    public Even {
      range("elements along a panel", nx, 2, 200);
      range("elements across a panel", ny, 2, 200);
    }
  }

  /**
   * Lines at given places, in order; the two sides of the panel are added. The second mesh has half
   * the size.
   *
   * @param along places of the lines x = const, mm
   * @param across places of the lines y = const, mm
   */
  record Lines(List<Double> along, List<Double> across) implements PanelMesh {
    /** Checks the order. */
    public Lines {
      along = rising("along", along);
      across = rising("across", across);
    }

    private static List<Double> rising(String way, List<Double> lines) {
      double last = Double.NEGATIVE_INFINITY;
      for (double at : lines) {
        if (!(at > last) || at < 0) {
          throw new IllegalArgumentException(
              "the mesh lines "
                  + way
                  + " a panel must rise from 0; found "
                  + at
                  + " after "
                  + last
                  + "; put them in order");
        }
        last = at;
      }
      return List.copyOf(lines);
    }
  }

  /** The usual choice. */
  PanelMesh AUTO = new Auto(24);

  private static void range(String what, int value, int low, int high) {
    if (value < low || value > high) {
      throw new IllegalArgumentException(
          what + " must lie between " + low + " and " + high + ", not " + value);
    }
  }
}
