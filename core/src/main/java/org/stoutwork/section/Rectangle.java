package org.stoutwork.section;

/**
 * A solid rectangle.
 *
 * @param b width, mm, positive
 * @param h depth in the plane of bending, mm, positive
 */
public record Rectangle(double b, double h) {

  /** Shear correction of a rectangle (Reissner; used by every Timoshenko member here). */
  public static final double SHEAR_FACTOR = 5.0 / 6.0;

  /**
   * @throws IllegalArgumentException if a side is not a positive number
   */
  public Rectangle {
    if (!(b > 0) || !(h > 0) || Double.isInfinite(b) || Double.isInfinite(h)) {
      throw new IllegalArgumentException(
          "a section needs two positive sides; given %s mm × %s mm".formatted(b, h));
    }
  }

  /** Area A = b·h, mm². */
  public double area() {
    return b * h;
  }

  /** Second moment I = b·h³/12 about the axis along b, mm⁴. */
  public double secondMoment() {
    return b * h * h * h / 12;
  }

  /** Section modulus W = b·h²/6 about the axis along b, mm³. */
  public double sectionModulus() {
    return b * h * h / 6;
  }

  /** Shear area κ·A, mm². */
  public double shearArea() {
    return SHEAR_FACTOR * area();
  }

  /** The same rectangle bent the other way. */
  public Rectangle turned() {
    return new Rectangle(h, b);
  }

  /**
   * Torsion constant, mm⁴: J = (l·s³/3)·[1 − 0.63 (s/l)(1 − (s/l)⁴/12)] with s the short and l the
   * long side; within half a per cent of the series solution (Timoshenko and Goodier, Theory of
   * Elasticity, torsion of rectangular bars; from memory).
   */
  public double torsionConstant() {
    double s = Math.min(b, h);
    double l = Math.max(b, h);
    double r = s / l;
    return l * s * s * s / 3 * (1 - 0.63 * r * (1 - r * r * r * r / 12));
  }
}
