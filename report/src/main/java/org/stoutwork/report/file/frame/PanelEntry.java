package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Optional;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.quantity.Writing;

/**
 * A flat rectangular panel of one thickness. Inside it x runs along and y across, from the origin
 * corner; w is positive along the normal, along × across.
 *
 * @param origin the left front corner of the middle surface, mm
 * @param along unit vector of x
 * @param across unit vector of y, at right angles to {@code along}
 * @param length extent along x, mm, positive
 * @param width extent along y, mm, positive
 * @param thickness mm, positive
 * @param constants elastic constants and density
 * @param mesh number of elements along and across, or empty to leave it to the program
 * @param thin whether transverse shear is left out
 * @param supports lines on which the panel is held; may be empty where ties hold it
 * @param report points whose results are wanted
 */
public record PanelEntry(
    Vec3 origin,
    Vec3 along,
    Vec3 across,
    double length,
    double width,
    double thickness,
    Constants constants,
    Optional<Mesh> mesh,
    boolean thin,
    List<PanelSupport> supports,
    List<Point> report) {

  /** Copies the lists. */
  public PanelEntry {
    supports = List.copyOf(supports);
    report = List.copyOf(report);
  }

  /**
   * Elastic constants in the panel's own directions: 1 along, 2 across, 3 through.
   *
   * @param e1 MPa
   * @param e2 MPa
   * @param g12 MPa
   * @param g13 MPa
   * @param g23 MPa
   * @param nu12 the larger Poisson ratio: contraction across for strain along
   * @param density kg/m³
   */
  public record Constants(
      double e1, double e2, double g12, double g13, double g23, double nu12, double density) {

    /** Checks that the stiffness is positive in every direction. */
    public Constants {
      if (!(nu12 * nu12 * e2 < e1)) {
        throw new IllegalArgumentException(
            "nu12 is "
                + Writing.number(nu12, 4)
                + ", but its size must stay below √(E1/E2) = "
                + Writing.number(Math.sqrt(e1 / e2), 4)
                + "; check which direction is 1");
      }
    }
  }

  /**
   * Number of elements.
   *
   * @param along along x, 2 to 200
   * @param across across, 2 to 200
   */
  public record Mesh(int along, int across) {}

  /**
   * A point of the panel.
   *
   * @param x mm from the left edge
   * @param y mm from the front edge
   */
  public record Point(double x, double y) {}

  /** Whether a point lies on the panel, edges included. */
  public boolean contains(double x, double y) {
    return x >= 0 && x <= length && y >= 0 && y <= width;
  }
}
