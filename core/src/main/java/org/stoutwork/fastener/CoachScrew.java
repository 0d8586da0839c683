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
 * @param washer diameter of the washer under the head, mm
 */
public record CoachScrew(
    double diameter,
    double root,
    double length,
    double thread,
    double tip,
    double bendingYield,
    double ultimate,
    double washer)
    implements Screw {

  private static final double CORE = 0.7;
  private static final double YIELD = 310;
  private static final double STEEL = 400;

  /**
   * A plain steel coach screw with a core of 0.7 of its shank and a tip of one diameter; yield and
   * strength of the steel are project defaults, meant for screws without a declaration.
   *
   * @param thread length of thread without the tip, mm
   * @param washer diameter of the washer, mm
   */
  public static CoachScrew plain(double diameter, double length, double thread, double washer) {
    return new CoachScrew(
        diameter, CORE * diameter, length, thread, diameter, YIELD, STEEL, washer);
  }

  /** Checks that the screw can exist. */
  public CoachScrew {
    ScrewChecks.check("coach screw", diameter, root, length, thread + tip);
    if (!(washer > diameter)) {
      throw new IllegalArgumentException(
          "a coach screw of %s mm needs a wider washer; it was %s mm".formatted(diameter, washer));
    }
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
    return washer;
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
