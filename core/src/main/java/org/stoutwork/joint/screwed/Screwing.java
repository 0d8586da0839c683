package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.Fastener;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.working.Pad;

/**
 * One screw through a piece on the head's side into a piece on the point's side.
 *
 * @param screw a coach screw or a wood screw
 * @param headThickness of the piece under the head, mm
 * @param head strengths of that piece
 * @param point strengths of the other piece
 * @param headAngle between shear and grain of the head-side piece, degrees
 * @param pointAngle the same on the point side
 * @param endGrain whether the thread sits in end grain
 * @param hole in the head-side piece
 * @param pilot diameter of the hole drilled for the thread, mm; 0 for none
 */
public record Screwing(
    Screw screw,
    double headThickness,
    TimberStrength head,
    TimberStrength point,
    double headAngle,
    double pointAngle,
    boolean endGrain,
    ScrewHole hole,
    double pilot)
    implements Fastening {

  /** Reach of the smooth shank with which it counts, EN 1995-1-1 8.7.1(2), from memory. */
  private static final double SHANK_REACH = 4;

  /** Effective diameter of a thread over its core, EN 1995-1-1 8.7.1(3), from memory. */
  private static final double THREAD = 1.1;

  /** Checks that the screw reaches into the second piece. */
  public Screwing {
    if (!(headThickness > 0 && headThickness < screw.length())) {
      throw new IllegalArgumentException(
          "a %s does not reach through %s mm: take a screw at least 6 d longer than that"
              .formatted(screw.title(), headThickness));
    }
    if (!(hole.width() >= screw.root())) {
      throw new IllegalArgumentException(
          "a hole of %s mm does not let a core of %s mm pass"
              .formatted(hole.width(), screw.root()));
    }
    if (!(hole.width() < screw.across())) {
      throw new IllegalArgumentException(
          "a head or washer of %s mm pulls through a hole of %s mm: take a wider one"
              .formatted(screw.across(), hole.width()));
    }
    if (!(pilot >= 0 && pilot <= screw.diameter())) {
      throw new IllegalArgumentException(
          "a hole of %s mm does not hold a %s: at most its diameter, 0 for none"
              .formatted(pilot, screw.title()));
    }
  }

  /** Core diameter, mm. */
  public double core() {
    return screw.root();
  }

  @Override
  public Fastener fastener() {
    return screw;
  }

  @Override
  public String word() {
    return "screw";
  }

  /** Length in the point-side piece with the tip, mm. */
  @Override
  public double reach() {
    return screw.length() - headThickness;
  }

  @Override
  public double tip() {
    return screw.tip();
  }

  /**
   * The smooth shank where it reaches into the second piece by four diameters, else 1.1 times the
   * core.
   */
  @Override
  public double effectiveDiameter() {
    boolean shank = screw.smooth() - headThickness >= SHANK_REACH * screw.diameter();
    return shank ? screw.diameter() : THREAD * screw.root();
  }

  @Override
  public boolean drilled() {
    return pilot > 0;
  }

  /** Length of thread in the point-side piece without the tip, mm. */
  public double thread() {
    return Math.max(0, Math.min(screw.bite(), reach() - screw.tip()));
  }

  /** Slip modulus of the screw in use, N/mm. */
  public double slipModulus(Pad pad, double headDensity, double pointDensity) {
    double density = Slip.density(pad, headDensity, pointDensity);
    return Slip.dowel(pad, density, screw.diameter());
  }
}
