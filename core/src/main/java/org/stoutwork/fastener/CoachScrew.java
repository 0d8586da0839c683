package org.stoutwork.fastener;

/**
 * A coach screw (lag screw) with a washer.
 *
 * @param diameter of the shank, mm
 * @param root diameter of the core under the thread, mm
 * @param length under the head, mm
 * @param thread length of thread without the tip, mm
 * @param tip length of the gimlet point, mm
 * @param bendingYield bending yield strength of the steel, MPa
 * @param ultimate tensile strength of the steel, MPa
 * @param washer under the head
 */
public record CoachScrew(
    double diameter,
    double root,
    double length,
    double thread,
    double tip,
    double bendingYield,
    double ultimate,
    Washer washer)
    implements Fastener {

  /** Checks that the screw can exist. */
  public CoachScrew {
    ScrewChecks.check("coach screw", diameter, root, length, thread + tip);
  }

  @Override
  public String title() {
    return ScrewChecks.title("coach screw", diameter, length);
  }
}
