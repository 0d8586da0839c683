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
    implements Screw {

  private static final double CORE = 0.7;
  private static final double YIELD = 310;
  private static final double STEEL = 400;
  private static final double WASHER_THICKNESS = 0.3;
  private static final double COVER = 1.05;

  /**
   * A plain steel coach screw with a core of 0.7 of its shank and a tip of one diameter; yield and
   * strength of the steel are project defaults, meant for screws without a declaration.
   *
   * @param thread length of thread without the tip, mm
   * @param washer diameter of the washer, made to cover the hole, mm
   * @param hole under the washer, mm
   */
  public static CoachScrew plain(
      double diameter, double length, double thread, double washer, double hole) {
    Washer under = new Washer(Math.max(washer, COVER * hole), hole, WASHER_THICKNESS * diameter);
    return new CoachScrew(diameter, CORE * diameter, length, thread, diameter, YIELD, STEEL, under);
  }

  /** Checks that the screw can exist. */
  public CoachScrew {
    ScrewChecks.check("coach screw", diameter, root, length, thread + tip);
  }

  @Override
  public double bite() {
    return thread;
  }

  @Override
  public double smooth() {
    return length - thread - tip;
  }

  @Override
  public double across() {
    return washer.outer();
  }

  @Override
  public double leastReach() {
    return 4;
  }

  @Override
  public String title() {
    return ScrewChecks.title("coach screw", diameter, length);
  }
}
