package org.stoutwork.fastener;

/**
 * A wood screw.
 *
 * @param diameter of the thread, mm
 * @param root diameter of the core under the thread, mm
 * @param length overall, mm
 * @param thread length of thread, mm
 * @param head diameter of the head, mm
 * @param bendingYield bending yield strength of the steel, MPa
 * @param ultimate tensile strength of the steel, MPa
 */
public record WoodScrew(
    double diameter,
    double root,
    double length,
    double thread,
    double head,
    double bendingYield,
    double ultimate)
    implements Screw {

  private static final double CORE = 0.65;
  private static final double YIELD = 550;
  private static final double STEEL = 500;

  /**
   * A plain steel screw with a core of 0.65 of its thread; yield and strength of the steel are
   * project defaults, meant for screws without a declaration.
   *
   * @param thread length of thread with its tip, mm
   * @param head diameter of the head or of the washer under it, mm
   */
  public static WoodScrew plain(double diameter, double length, double thread, double head) {
    return new WoodScrew(diameter, CORE * diameter, length, thread, head, YIELD, STEEL);
  }

  /** Checks that the screw can exist. */
  public WoodScrew {
    ScrewChecks.check("wood screw", diameter, root, length, thread);
    if (!(head > diameter)) {
      throw new IllegalArgumentException(
          "a wood screw of %s mm needs a wider head; it was %s mm".formatted(diameter, head));
    }
  }

  @Override
  public double bite() {
    return thread - diameter;
  }

  @Override
  public double tip() {
    return diameter;
  }

  @Override
  public double smooth() {
    return length - thread;
  }

  @Override
  public double across() {
    return head;
  }

  @Override
  public double leastReach() {
    return 6;
  }

  @Override
  public String title() {
    return ScrewChecks.title("wood screw", diameter, length);
  }
}
