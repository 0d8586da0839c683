package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/** Stresses in a member and how they go together. */
final class MemberFormulas {

  private static final Source BEAM = Source.derived("beam theory");

  static final Formula AXIAL =
      Formula.define("σ_0")
          .meaning("stress along the grain, net of the mortise")
          .unit(Unit.MPA)
          .where("N", "axial force", Unit.N)
          .where("A_{net}", "net area", Unit.MM2)
          .as("N/A_{net}")
          .source(BEAM);

  static final Formula BENDING_Y = bending("σ_{m,y}", "M_y", "bending stress up and down", "W_y");
  static final Formula BENDING_Z = bending("σ_{m,z}", "M_z", "bending stress sideways", "W_z");

  private static Formula bending(String result, String moment, String meaning, String modulus) {
    return Formula.define(result)
        .meaning(meaning + ", net of the mortise")
        .unit(Unit.MPA)
        .where(moment, "moment", Unit.N_MM)
        .where(modulus, "net section modulus", Unit.MM3)
        .as(moment + "/" + modulus)
        .source(BEAM);
  }

  static final Formula SHEAR =
      Formula.define("τ")
          .meaning("shear stress, both directions together")
          .unit(Unit.MPA)
          .where("V_z", "shear force up and down", Unit.N)
          .where("A_z", "area that carries it, net of the mortise", Unit.MM2)
          .where("V_y", "shear force sideways", Unit.N)
          .where("A_y", "area that carries it", Unit.MM2)
          .where("k_{cr}", "part of the width without checks", Unit.ONE)
          .as("1.5*sqrt((V_z/A_z)^2 + (V_y/A_y)^2)/k_{cr}")
          .source(Source.derived("parabolic shear in a rectangle; net section by V·S/(I·b)"));

  private static final Source EC5_6_23 = Source.fromMemory("EN 1995-1-1", "6.3.2, eq. 6.23");
  private static final Source EC5_6_24 = Source.fromMemory("EN 1995-1-1", "6.3.2, eq. 6.24");
  private static final Source EC5_TENSION = Source.fromMemory("EN 1995-1-1", "6.2.3");
  private static final Source NDS = Source.fromMemory("NDS", "3.9.2");
  private static final Source NDS_TENSION = Source.fromMemory("NDS", "3.9.1");

  static final Formula COMPRESSION_Y =
      european("σ_0/(k_{c,y}*f_{c,0}) + σ_{m,y}/f_m + 0.7*σ_{m,z}/f_m", "k_{c,y}", EC5_6_23);
  static final Formula COMPRESSION_Z =
      european("σ_0/(k_{c,z}*f_{c,0}) + 0.7*σ_{m,y}/f_m + σ_{m,z}/f_m", "k_{c,z}", EC5_6_24);

  private static Formula european(String text, String kc, Source source) {
    return Formula.define("u")
        .meaning("compression, buckling and bending together")
        .where("σ_0", "compression stress", Unit.MPA)
        .where(kc, "part of the strength that buckling leaves", Unit.ONE)
        .where("f_{c,0}", "compression strength", Unit.MPA)
        .where("σ_{m,y}", "bending stress up and down", Unit.MPA)
        .where("σ_{m,z}", "bending stress sideways", Unit.MPA)
        .where("f_m", "bending strength", Unit.MPA)
        .as(text)
        .source(source);
  }

  static final Formula TENSION =
      Formula.define("u")
          .meaning("tension and bending together")
          .where("σ_0", "tension stress", Unit.MPA)
          .where("f_{t,0}", "tension strength", Unit.MPA)
          .where("σ_{m,y}", "bending stress up and down", Unit.MPA)
          .where("σ_{m,z}", "bending stress sideways", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("σ_0/f_{t,0} + max(σ_{m,y} + 0.7*σ_{m,z}, 0.7*σ_{m,y} + σ_{m,z})/f_m")
          .source(EC5_TENSION);

  static final Formula AMERICAN_TENSION =
      Formula.define("u")
          .meaning("tension and bending together")
          .where("σ_0", "tension stress", Unit.MPA)
          .where("f_{t,0}", "tension strength", Unit.MPA)
          .where("σ_{m,y}", "bending stress up and down", Unit.MPA)
          .where("σ_{m,z}", "bending stress sideways", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("σ_0/f_{t,0} + (σ_{m,y} + σ_{m,z})/f_m")
          .source(NDS_TENSION);

  static final Formula AMERICAN_COMPRESSION =
      Formula.define("u")
          .meaning("compression, buckling and bending together")
          .where("σ_0", "compression stress", Unit.MPA)
          .where("C_P", "part of the strength that buckling leaves", Unit.ONE)
          .where("f_{c,0}", "compression strength", Unit.MPA)
          .where("σ_{m,y}", "bending stress up and down", Unit.MPA)
          .where("F_{cE,y}", "critical stress up and down", Unit.MPA)
          .where("σ_{m,z}", "bending stress sideways", Unit.MPA)
          .where("F_{cE,z}", "critical stress sideways", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as(
              "(σ_0/(C_P*f_{c,0}))^2 + σ_{m,y}/(f_m*(1 - σ_0/F_{cE,y}))"
                  + " + σ_{m,z}/(f_m*(1 - σ_0/F_{cE,z}))")
          .source(NDS);

  private MemberFormulas() {}
}
