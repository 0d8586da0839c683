package org.stoutwork.fastener.placing;

import org.stoutwork.fastener.Documents;
import org.stoutwork.source.Source;

/**
 * How wide a hole is drilled for a thread or a nail, as parts of the diameter: narrower splits the
 * wood or twists the screw off, wider lets the thread go.
 *
 * @param least part of the diameter; 0 where none need be drilled
 * @param most part of the diameter
 * @param source of the rule
 */
public record PilotHoles(double least, double most, Source source) {

  private static final double DENSE = 0.6;
  private static final double MIDDLING = 0.5;

  /** Coach screws, part of the shank, by the specific gravity of the wood. */
  public static PilotHoles coachScrew(double gravity) {
    Source nds = Documents.nds("12.1.4.2");
    if (gravity > DENSE) {
      return new PilotHoles(0.65, 0.85, nds);
    }
    return gravity > MIDDLING ? new PilotHoles(0.6, 0.75, nds) : new PilotHoles(0.4, 0.7, nds);
  }

  /**
   * Wood screws, part of the core: about 90 % in dense wood, about 70 % in middling wood; in light
   * wood none need be drilled. How far one may go from these is a project default.
   */
  public static PilotHoles woodScrew(double gravity) {
    Source nds = Documents.nds("12.1.5.2, 12.1.5.3");
    if (gravity > DENSE) {
      return new PilotHoles(0.8, 1, nds);
    }
    return gravity > MIDDLING ? new PilotHoles(0.6, 0.9, nds) : new PilotHoles(0, 1, nds);
  }

  /** Nails, part of the nail, by the characteristic density of the wood. */
  public static PilotHoles nail(double density) {
    Source ec5 = Documents.ec5("8.3.1.1(2): drilled above 500 kg/m³, to at most 0.8 d");
    return density > 500 ? new PilotHoles(0.6, 0.8, ec5) : new PilotHoles(0, 0.8, ec5);
  }
}
