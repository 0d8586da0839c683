package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.Documents;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Two layers bent together, held by screws that slip: what one screw carries. The second layer is
 * the one that the first is reckoned against; which is which does not matter to the force.
 *
 * @param ea1 modulus times area of one layer, N
 * @param ea2 the same of the other, N
 * @param own bending stiffness of both layers by themselves, N·mm²
 * @param between distance of their middles, mm
 * @param spacing of the screws along the span, divided by the rows, mm
 * @param span of a simply supported length, mm
 */
public record LayerSlip(
    double ea1, double ea2, double own, double between, double spacing, double span) {

  private static final Source ANNEX = Documents.ec5("Annex B, (B.1) to (B.10)");

  private static final Formula GAMMA =
      Formula.define("γ_1")
          .meaning("how far the screws make the layers work together")
          .where("EA_1", "modulus times area of one layer", Unit.N)
          .where("s", "spacing of screws over their rows", Unit.MM)
          .where("K", "slip modulus of one screw near failure", Unit.N_PER_MM)
          .where("L", "span", Unit.MM)
          .as("1/(1 + π^2*EA_1*s/(K*L^2))")
          .source(ANNEX);

  private static final Formula ARM =
      Formula.define("a_1")
          .meaning("distance of the layer's middle from the common axis")
          .unit(Unit.MM)
          .where("z", "distance of both middles", Unit.MM)
          .where("γ_1", "working together", Unit.ONE)
          .where("EA_1", "one layer", Unit.N)
          .where("EA_2", "other layer", Unit.N)
          .as("z*EA_2/(γ_1*EA_1 + EA_2)")
          .source(ANNEX);

  private static final Formula STIFFNESS =
      Formula.define("EI_ef")
          .meaning("bending stiffness of both layers with slip")
          .unit(Unit.N_MM2)
          .where("EI_own", "layers by themselves", Unit.N_MM2)
          .where("γ_1", "working together", Unit.ONE)
          .where("EA_1", "one layer", Unit.N)
          .where("a_1", "its distance from the axis", Unit.MM)
          .where("EA_2", "other layer", Unit.N)
          .where("z", "distance of both middles", Unit.MM)
          .as("EI_own + γ_1*EA_1*a_1^2 + EA_2*(z - a_1)^2")
          .source(ANNEX);

  private static final Formula FORCE =
      Formula.define("F_1")
          .meaning("force on one screw")
          .unit(Unit.N)
          .where("γ_1", "working together", Unit.ONE)
          .where("EA_1", "one layer", Unit.N)
          .where("a_1", "its distance from the axis", Unit.MM)
          .where("s", "spacing of screws over their rows", Unit.MM)
          .where("V", "shear force", Unit.N)
          .where("EI_ef", "bending stiffness", Unit.N_MM2)
          .as("γ_1*EA_1*a_1*s*V/EI_ef")
          .source(ANNEX);

  /**
   * How far the screws make the layers work together, from 0 (not at all) to 1 (as if glued).
   *
   * @param slip modulus of one screw, N/mm, above 0
   */
  public double gamma(Pad pad, double slip) {
    return pad.take(GAMMA, ea1, spacing, slip, span);
  }

  /**
   * Distance of the first layer's middle from the common axis, mm; the other's is the rest of
   * {@link #between}.
   *
   * @param gamma how far the layers work together, 0 to 1
   */
  public double arm(Pad pad, double gamma) {
    return pad.take(ARM, between, gamma, ea1, ea2);
  }

  /**
   * Bending stiffness of both layers with slip, N·mm².
   *
   * @param gamma how far the layers work together, 0 to 1
   * @param arm distance of the first layer's middle from the common axis, mm
   */
  public double stiffness(Pad pad, double gamma, double arm) {
    return pad.take(STIFFNESS, own, gamma, ea1, arm, ea2, between);
  }

  /**
   * Force on one screw, N.
   *
   * @param slip modulus of one screw, N/mm
   * @param shear in the layers together, N
   */
  public double force(Pad pad, double slip, double shear) {
    double gamma = gamma(pad, slip);
    double arm = arm(pad, gamma);
    double stiffness = stiffness(pad, gamma, arm);
    return pad.take(FORCE, gamma, ea1, arm, spacing, shear, stiffness);
  }
}
