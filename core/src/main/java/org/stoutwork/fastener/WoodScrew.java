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
    implements Fastener {

  /** Checks that the screw can exist. */
  public WoodScrew {
    ScrewChecks.check("wood screw", diameter, root, length, thread);
    if (!(head > diameter)) {
      throw new IllegalArgumentException(
          "a wood screw of %s mm needs a wider head; it was %s mm".formatted(diameter, head));
    }
  }

  @Override
  public String title() {
    return ScrewChecks.title("wood screw", diameter, length);
  }
}
