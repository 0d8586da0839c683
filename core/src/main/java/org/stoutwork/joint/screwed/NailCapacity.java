package org.stoutwork.joint.screwed;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.placing.PilotHoles;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.fastener.withdrawal.NailWithdrawal;
import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** What one nail carries: shank and head pulled, shear, and the rules of nailing. */
public final class NailCapacity extends FasteningCapacity<Nailing> {

  /** Bending yield strength of common nails of 2 to 4 mm, MPa; NDS Table I1, from memory. */
  private static final double BENDING_YIELD = 690;

  private static final Formula UNDRILLED =
      Formula.define("t_min")
          .meaning("least thickness that does not split without a drilled hole")
          .unit(Unit.MM)
          .where("d", "nail", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("max(7*d, (13*d - 30)*ρ_k/400)")
          .source(Documents.ec5("8.3.1.2(6) (8.18)"));

  private static final Formula TOGETHER_EC5 = together(Documents.ec5("8.3.3 (8.27), smooth nails"));

  private static final Formula TOGETHER_NDS =
      together(Documents.nds("12.4.2, its angle formula written out"));

  private NailCapacity(
      Nailing nailing, StrengthFamily family, FastenerForces forces, List<Seat> head) {
    super(nailing, family, forces, head, List.of());
  }

  /**
   * The limits of the most used of some nails.
   *
   * @param forces of all of them
   * @param seats in the piece under the heads; none to leave the distances out
   */
  public static List<JointLimit> utilisations(
      Nailing nailing,
      StrengthFamily family,
      FastenerForces forces,
      List<Seat> seats,
      boolean keepWorkings) {
    NailCapacity c = new NailCapacity(nailing, family, forces, seats);
    Limits limits = new Limits(keepWorkings);
    limits.strength("nail pulling out", "nail", Unit.N, c::pull, c::withdrawal);
    limits.strength("nail head pulling through", "nail", Unit.N, c::pull, c::through);
    limits.strength("nail yielding across", "nail", Unit.N, c::shear, c::lateral);
    if (c.pull(Pad.blank()) > 0) {
      limits.strength("pull and shear of the nail together", "nail", Unit.ONE, c::together, p -> 1);
    }
    c.rules(limits);
    c.seats(limits);
    return limits.list();
  }

  private void rules(Limits limits) {
    double d = fastening.effectiveDiameter();
    limits.rule(
        "reach of the nail",
        "nail",
        fastening.reach(),
        NailWithdrawal.LEAST_REACH * d,
        Unit.MM,
        Documents.ec5("8.3.1.2(1): 8 d for smooth nails"));
    Pilots.rule(limits, "nail", PilotHoles.nail(fastening.point().density()), d, fastening.pilot());
    if (!fastening.drilled()) {
      limits.least(
          "piece split by the nail",
          "piece under the head",
          Unit.MM,
          pad -> pad.take(UNDRILLED, d, fastening.head().density()),
          pad ->
              pad.given(
                  "t",
                  "thickness of the piece",
                  fastening.headThickness(),
                  Unit.MM,
                  Source.derived("geometry")));
    }
  }

  private double withdrawal(Pad pad) {
    if (fastening.endGrain()) {
      pad.remark("No smooth nail is counted that is pulled from end grain.");
      return 0;
    }
    double d = fastening.effectiveDiameter();
    double reach = fastening.reach();
    return family instanceof StrengthFamily.Allowable a
        ? ScrewWithdrawal.nail(pad, fastening.point().gravity(), d, reach, a.loadDuration())
        : design(pad, NailWithdrawal.point(pad, d, reach, fastening.point().density()));
  }

  /** Smooth nails add straight by both codes. */
  private double together(Pad pad) {
    double pull = pull(pad);
    double shear = shear(pad);
    double along = Math.min(withdrawal(pad), through(pad));
    return pad.take(
        family instanceof StrengthFamily.Allowable ? TOGETHER_NDS : TOGETHER_EC5,
        pull,
        along,
        shear,
        lateral(pad));
  }

  private static Formula together(Source source) {
    return Formula.define("u")
        .meaning("pull and shear together, added straight")
        .where("F_ax", "pull", Unit.N)
        .where("F_{ax,R}", "pull-out capacity", Unit.N)
        .where("F_v", "shear", Unit.N)
        .where("F_{v,R}", "shear capacity", Unit.N)
        .as("F_ax/F_{ax,R} + F_v/F_{v,R}")
        .source(source);
  }

  private double through(Pad pad) {
    TimberStrength wood = fastening.head();
    double head = fastening.nail().head();
    double thickness = fastening.headThickness();
    return design(
        pad,
        family instanceof StrengthFamily.Allowable
            ? Heads.pullThroughAllowable(pad, wood.gravity(), head, thickness)
            : NailWithdrawal.head(
                pad, fastening.effectiveDiameter(), head, thickness, wood.density()));
  }

  @Override
  double core() {
    return fastening.nail().diameter();
  }

  @Override
  double ultimate() {
    return fastening.nail().ultimate();
  }

  @Override
  double bendingYield() {
    return BENDING_YIELD;
  }

  @Override
  double bearing(Pad pad, TimberStrength wood, double degrees) {
    return fastening.drilled()
        ? Embedment.along(pad, fastening.effectiveDiameter(), wood.density())
        : Embedment.driven(pad, fastening.effectiveDiameter(), wood.density());
  }
}
