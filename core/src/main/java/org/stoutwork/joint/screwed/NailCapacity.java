package org.stoutwork.joint.screwed;

import java.util.List;
import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.NdsYield;
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
public final class NailCapacity {

  /** Bending yield strength of common nails of 2 to 4 mm, MPa; NDS Table I1, from memory. */
  private static final double BENDING_YIELD = 690;

  private static final Formula DESIGN =
      Formula.define("F_d")
          .meaning("design value")
          .unit(Unit.N)
          .where("F_k", "characteristic", Unit.N)
          .where("k_mod", "duration and moisture", Unit.ONE)
          .where("γ_M", "partial factor", Unit.ONE)
          .as("k_mod*F_k/γ_M")
          .source(Documents.ec5("2.4.3"));

  private static final Formula DURATION =
      Formula.define("F_a")
          .meaning("allowable value")
          .unit(Unit.N)
          .where("F", "at normal duration", Unit.N)
          .where("C_D", "load duration", Unit.ONE)
          .where("C_eg", "0.67 in end grain", Unit.ONE)
          .as("F*C_D*C_eg")
          .source(Documents.nds("Table 11.3.1, 12.5.2"));

  private static final Formula THIRD =
      Formula.define("F_{v,end}")
          .meaning("shear of a smooth nail in end grain")
          .unit(Unit.N)
          .where("F_v", "shear in side grain", Unit.N)
          .as("F_v/3")
          .source(Documents.ec5("8.3.1.2(4)"));

  private static final Formula UNDRILLED =
      Formula.define("t_min")
          .meaning("least thickness that does not split without a drilled hole")
          .unit(Unit.MM)
          .where("d", "nail", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("max(7*d, (13*d - 30)*ρ_k/400)")
          .source(Documents.ec5("8.3.1.2(6) (8.18)"));

  private final Nailing nailing;
  private final StrengthFamily family;

  private NailCapacity(Nailing nailing, StrengthFamily family) {
    this.nailing = nailing;
    this.family = family;
  }

  /**
   * The limits of one nail.
   *
   * @param pull N, along the nail
   * @param shear N, across it
   */
  public static List<JointLimit> utilisations(
      Nailing nailing, StrengthFamily family, double pull, double shear, boolean keepWorkings) {
    NailCapacity c = new NailCapacity(nailing, family);
    Limits limits = new Limits(keepWorkings);
    limits.strength("nail pulling out", "nail", pull, Unit.N, c::withdrawal);
    limits.strength("nail head pulling through", "nail", pull, Unit.N, c::head);
    limits.strength("nail yielding across", "nail", shear, Unit.N, c::lateral);
    c.rules(limits);
    return limits.list();
  }

  private void rules(Limits limits) {
    double d = nailing.nail().diameter();
    limits.rule(
        "reach of the nail",
        "nail",
        nailing.reach(),
        NailWithdrawal.LEAST_REACH * d,
        Unit.MM,
        Documents.ec5("8.3.1.2(1): 8 d for smooth nails"));
    Pilots.rule(limits, "nail", PilotHoles.nail(nailing.point().density()), d, nailing.pilot());
    if (nailing.pilot() == 0) {
      limits.rule(
          "piece split by the nail",
          "piece under the head",
          Unit.MM,
          pad -> pad.take(UNDRILLED, d, nailing.head().density()),
          pad ->
              pad.given(
                  "t",
                  "thickness of the piece",
                  nailing.headThickness(),
                  Unit.MM,
                  Source.derived("geometry")));
    }
  }

  private double design(Pad pad, double force) {
    if (family instanceof StrengthFamily.PartialFactors p) {
      return pad.take(DESIGN, force, p.kMod(), p.gammaM());
    }
    double duration = ((StrengthFamily.Allowable) family).loadDuration();
    return pad.take(DURATION, force, duration, nailing.endGrain() ? 0.67 : 1);
  }

  private double withdrawal(Pad pad) {
    if (nailing.endGrain()) {
      pad.remark("No smooth nail is counted that is pulled from end grain.");
      return 0;
    }
    double d = nailing.nail().diameter();
    if (family instanceof StrengthFamily.Allowable a) {
      return ScrewWithdrawal.nail(
          pad, nailing.point().gravity(), d, nailing.reach(), a.loadDuration());
    }
    return design(pad, NailWithdrawal.point(pad, d, nailing.reach(), nailing.point().density()));
  }

  private double head(Pad pad) {
    if (family instanceof StrengthFamily.Allowable) {
      double force =
          Heads.pullThroughAllowable(
              pad, nailing.head().gravity(), nailing.nail().head(), nailing.headThickness());
      return design(pad, force);
    }
    return design(
        pad,
        NailWithdrawal.head(
            pad,
            nailing.nail().diameter(),
            nailing.nail().head(),
            nailing.headThickness(),
            nailing.head().density()));
  }

  private double lateral(Pad pad) {
    double d = nailing.nail().diameter();
    if (family instanceof StrengthFamily.Allowable) {
      double fem = Embedment.nds(pad, nailing.point().gravity(), d, 0);
      double fes = Embedment.nds(pad, nailing.head().gravity(), d, 0);
      return design(
          pad,
          NdsYield.single(
                  pad, d, nailing.reach(), nailing.headThickness(), fem, fes, BENDING_YIELD, 0)
              .least()
              .force());
    }
    double moment = Johansen.steelMoment(pad, nailing.nail().ultimate(), d);
    double yield =
        Johansen.single(
                pad,
                nailing.headThickness(),
                nailing.reach(),
                d,
                bearing(pad, nailing.head()),
                bearing(pad, nailing.point()),
                moment,
                0,
                0)
            .least()
            .force();
    double force = nailing.endGrain() ? pad.take(THIRD, yield) : yield;
    return design(pad, force);
  }

  private double bearing(Pad pad, TimberStrength wood) {
    double d = nailing.nail().diameter();
    return nailing.pilot() > 0
        ? Embedment.along(pad, d, wood.density())
        : Embedment.driven(pad, d, wood.density());
  }
}
