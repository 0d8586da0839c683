package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.Fastener;
import org.stoutwork.fastener.Nail;
import org.stoutwork.joint.setting.TimberStrength;

/**
 * One nail through a piece on the head's side into a piece on the point's side.
 *
 * @param nail smooth and round
 * @param headThickness of the piece under the head, mm
 * @param head strengths of that piece
 * @param point strengths of the other piece
 * @param endGrain whether the nail sits in end grain
 * @param pilot diameter of the hole drilled for it, mm; 0 for none
 */
public record Nailing(
    Nail nail,
    double headThickness,
    TimberStrength head,
    TimberStrength point,
    boolean endGrain,
    double pilot)
    implements Fastening {

  /** Checks that the nail reaches into the second piece and is held by its hole. */
  public Nailing {
    if (!(headThickness > 0 && headThickness < nail.length())) {
      throw new IllegalArgumentException(
          "a %s does not reach through %s mm: take one at least 8 d longer than that"
              .formatted(nail.title(), headThickness));
    }
    if (!(pilot >= 0 && pilot <= nail.diameter())) {
      throw new IllegalArgumentException(
          "a hole of %s mm does not hold a %s: at most its diameter, 0 for none"
              .formatted(pilot, nail.title()));
    }
  }

  @Override
  public Fastener fastener() {
    return nail;
  }

  @Override
  public String word() {
    return "nail";
  }

  @Override
  public double reach() {
    return nail.length() - headThickness;
  }

  /** Two diameters, NDS, from memory. */
  @Override
  public double tip() {
    return 2 * nail.diameter();
  }

  @Override
  public double effectiveDiameter() {
    return nail.diameter();
  }

  /** A nail bears alike at every angle to the grain. */
  @Override
  public double headAngle() {
    return 0;
  }

  @Override
  public double pointAngle() {
    return 0;
  }

  @Override
  public boolean drilled() {
    return pilot > 0;
  }
}
