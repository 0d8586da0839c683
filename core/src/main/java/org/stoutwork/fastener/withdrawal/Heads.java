package org.stoutwork.fastener.withdrawal;

import org.stoutwork.fastener.Documents;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.Washer;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Heads and washers pressed into wood, heads pulled through it, and steel in tension. */
public final class Heads {

  private static final Formula AREA =
      Formula.define("A_w")
          .meaning("contact area of the washer")
          .unit(Unit.MM2)
          .where("d_w", "washer diameter", Unit.MM)
          .where("d_h", "hole", Unit.MM)
          .as("π*(d_w^2 - d_h^2)/4")
          .source(Source.derived("geometry"));

  private static final Formula SLOT_AREA =
      Formula.define("A_w")
          .meaning("contact area of the washer or head over a slot")
          .unit(Unit.MM2)
          .where("d_w", "diameter of the washer or head", Unit.MM)
          .where("b", "width of the slot", Unit.MM)
          .where("l", "length of the slot", Unit.MM)
          .as(
              "π*d_w^2/4 - min(b*(l - b) + π*b^2/4,"
                  + " (b*sqrt(d_w^2 - b^2) + d_w^2*atan(b/sqrt(d_w^2 - b^2)))/2)")
          .source(
              Source.derived(
                  "geometry: less the whole slot, or a strip of its width right across the washer"));

  private static final Formula OVER_HOLE =
      Formula.define("F_{head,h}")
          .meaning("force that pulls the head through, over a hole wider than the screw")
          .unit(Unit.N)
          .where("F_head", "the same over a hole that fits the screw", Unit.N)
          .where("A_h", "wood under the head", Unit.MM2)
          .where("A_{h,0}", "the same over a hole that fits the screw", Unit.MM2)
          .as("F_head*A_h/A_{h,0}")
          .source(Source.projectDefault("in proportion to the wood that the head still presses"));

  private static final Formula WASHER_EC5 =
      Formula.define("F_w")
          .meaning("force that the wood under the washer takes")
          .unit(Unit.N)
          .where("f_{c,90}", "compression strength across the grain", Unit.MPA)
          .where("A_w", "contact area", Unit.MM2)
          .as("3*f_{c,90}*A_w")
          .source(Documents.ec5("8.5.2(2)"));

  private static final Formula WASHER_NDS =
      Formula.define("F_w")
          .meaning("force that the wood under the washer takes")
          .unit(Unit.N)
          .where("F_{c,⊥}", "allowable compression across the grain", Unit.MPA)
          .where("C_b", "bearing area factor", Unit.ONE)
          .where("A_w", "contact area", Unit.MM2)
          .as("F_{c,⊥}*C_b*A_w")
          .source(Documents.nds("3.10.4"));

  private static final Formula BEARING_FACTOR =
      Formula.define("C_b")
          .meaning("bearing area factor of a short bearing")
          .where("l_b", "bearing length along the grain", Unit.IN)
          .fitted("(l_b + 0.375)/l_b")
          .source(Documents.nds("3.10.4"));

  private static final Formula PULL_THROUGH =
      Formula.define("F_{head,Rk}")
          .meaning("force that pulls the head through")
          .unit(Unit.N)
          .where("f_head", "pull-through strength at 350 kg/m³", Unit.MPA)
          .where("d_h", "head diameter", Unit.MM)
          .where("ρ_k", "characteristic density", Unit.KG_PER_M3)
          .fitted("f_head*d_h^2*(ρ_k/350)^0.8")
          .source(Documents.ec5("8.7.2 (8.40b)"));

  private static final Formula PULL_THROUGH_NDS =
      Formula.define("W_H")
          .meaning("allowable force that pulls the head through, side piece thicker than 2.5 heads")
          .unit(Unit.LBF)
          .where("G", "specific gravity", Unit.ONE)
          .where("D_H", "head diameter", Unit.IN)
          .fitted("690*π*D_H*G^2*2.5*D_H")
          .source(Documents.nds("12.2.5 (12.2-6b)"));

  private static final Formula THIN_NDS =
      Formula.define("W_H")
          .meaning("allowable force that pulls the head through a thin side piece")
          .unit(Unit.LBF)
          .where("G", "specific gravity", Unit.ONE)
          .where("D_H", "head diameter", Unit.IN)
          .where("t_ns", "thickness of the side piece", Unit.IN)
          .fitted("690*π*D_H*G^2*t_ns")
          .source(Documents.nds("12.2.5 (12.2-6a)"));

  private static final Formula BOLT =
      Formula.define("F_{t,Rd}")
          .meaning("bolt in tension")
          .unit(Unit.N)
          .where("f_ub", "tensile strength of the steel", Unit.MPA)
          .where("A_s", "stress area", Unit.MM2)
          .where("γ_M2", "partial factor", Unit.ONE)
          .as("0.9*f_ub*A_s/γ_M2")
          .source(Source.fromMemory("EN 1993-1-8:2005", "Table 3.4"));

  private static final Formula CORE =
      Formula.define("F_t")
          .meaning("core of a screw in tension")
          .unit(Unit.N)
          .where("f_u", "tensile strength of the steel", Unit.MPA)
          .where("d_1", "core diameter", Unit.MM)
          .where("γ", "factor of safety", Unit.ONE)
          .as("f_u*π*d_1^2/4/γ")
          .source(Source.derived("statics"));

  private static final Formula TOGETHER =
      Formula.define("u")
          .meaning("pull and shear together")
          .where("F_ax", "pull", Unit.N)
          .where("F_{ax,R}", "pull-out capacity", Unit.N)
          .where("F_v", "shear", Unit.N)
          .where("F_{v,R}", "shear capacity", Unit.N)
          .as("(F_ax/F_{ax,R})^2 + (F_v/F_{v,R})^2")
          .source(Documents.ec5("8.3.3 (8.28), 8.7.3"));

  private Heads() {}

  /** Contact area of a washer, mm². */
  public static double area(Pad pad, double outer, double hole) {
    return pad.take(AREA, outer, hole);
  }

  /**
   * Wood that a washer or head presses, mm²: least where the hole stands right under it.
   *
   * @param outer diameter of the washer or head, mm, more than the width of the hole
   */
  public static double area(Pad pad, double outer, ScrewHole hole) {
    return hole.isRound()
        ? area(pad, outer, hole.width())
        : pad.take(SLOT_AREA, outer, hole.width(), hole.length());
  }

  /** EN 1995-1-1, wood under a washer, at the level of the strength given, N. */
  public static double washer(Pad pad, Washer washer, double fc90) {
    return washer(pad, washer.outer(), ScrewHole.round(washer.hole()), fc90);
  }

  /**
   * EN 1995-1-1, wood under a washer over a hole or slot, at the level of the strength given, N.
   */
  public static double washer(Pad pad, double outer, ScrewHole hole, double fc90) {
    return pad.take(WASHER_EC5, fc90, area(pad, outer, hole));
  }

  /** NDS, wood under a washer, N; the bearing factor holds for less than 6 in. */
  public static double washerAllowable(Pad pad, Washer washer, double fcPerp) {
    return washerAllowable(pad, washer.outer(), ScrewHole.round(washer.hole()), fcPerp);
  }

  /** NDS, wood under a washer over a hole or slot, N. */
  public static double washerAllowable(Pad pad, double outer, ScrewHole hole, double fcPerp) {
    double inches = Unit.MM.convert(outer, Unit.IN);
    double cb = inches < 6 ? pad.take(BEARING_FACTOR, inches) : 1;
    return pad.take(WASHER_NDS, fcPerp, cb, area(pad, outer, hole));
  }

  /**
   * A head over a hole wider than its screw pulls through by less, N; unchanged where it fits.
   *
   * @param force that pulls it through where the hole fits, N
   * @param head diameter, mm, more than the width of the hole
   * @param screw diameter, mm
   */
  public static double overHole(Pad pad, double force, double head, double screw, ScrewHole hole) {
    if (hole.length() <= screw) {
      return force;
    }
    double left = area(pad, head, hole);
    double whole = area(pad, head, ScrewHole.round(screw));
    return pad.take(OVER_HOLE, force, Math.min(left, whole), whole);
  }

  /**
   * EN 1995-1-1, head pulled through, characteristic, N.
   *
   * @param strength declared for the screw at 350 kg/m³, MPa; 9 to 12 for countersunk heads
   */
  public static double pullThrough(Pad pad, double strength, double head, double density) {
    return pad.take(PULL_THROUGH, strength, head, density);
  }

  /** NDS, head pulled through the side piece, allowable at normal duration, N. */
  public static double pullThroughAllowable(
      Pad pad, double gravity, double head, double thickness) {
    double dh = Unit.MM.convert(head, Unit.IN);
    double t = Unit.MM.convert(thickness, Unit.IN);
    double lbf =
        t <= 2.5 * dh
            ? pad.take(THIN_NDS, gravity, dh, t)
            : pad.take(PULL_THROUGH_NDS, gravity, dh);
    return Unit.LBF.convert(lbf, Unit.N);
  }

  /** Bolt in tension, design value, N. */
  public static double bolt(Pad pad, double ultimate, double stressArea, double gammaM2) {
    return pad.take(BOLT, ultimate, stressArea, gammaM2);
  }

  /** Core of a screw in tension, N. */
  public static double core(Pad pad, double ultimate, double core, double factor) {
    return pad.take(CORE, ultimate, core, factor);
  }

  /** Pull and shear together; at most 1. */
  public static double together(Pad pad, double pull, double pullR, double shear, double shearR) {
    return pad.take(TOGETHER, pull, pullR, shear, shearR);
  }
}
