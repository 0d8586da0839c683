package org.stoutwork.joint.setting;

/**
 * A glue and the line it makes.
 *
 * @param name as the trade calls it
 * @param thickness of the line, mm
 * @param shearModulus of the cured glue, MPa
 * @param grade class to which it was tested
 * @param creeps whether the line gives way under lasting load
 */
public record Glue(
    String name, double thickness, double shearModulus, GlueClass grade, boolean creeps) {

  /** Polyvinyl acetate, a line of 0.1 mm; modulus an order of magnitude, no source. */
  public static final Glue PVA = new Glue("PVA", 0.1, 150, GlueClass.D3, true);

  /** Checks that there is a line of glue. */
  public Glue {
    if (!(thickness > 0 && shearModulus >= 0)) {
      throw new IllegalArgumentException(
          "glue \"%s\" needs a line thicker than 0 mm and a modulus of 0 MPa or more; it was %s mm, %s MPa"
              .formatted(name, thickness, shearModulus));
    }
  }

  /** Whether it is a structural adhesive in the sense of EN 301. */
  public boolean structural() {
    return grade.structural();
  }

  /** Shear stiffness of the line per area, N/mm³. */
  public double slipStiffness() {
    return shearModulus / thickness;
  }
}
