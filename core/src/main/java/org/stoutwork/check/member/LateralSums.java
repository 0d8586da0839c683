package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/**
 * How stresses go together in a member that may buckle laterally while it is bent about its
 * stronger axis. The codes ask this in bending and in bending with compression; tension, which
 * would help against lateral buckling, is counted as if it did not. Under partial factors the sums
 * of columns hold k_crit too, so that bending both ways is not forgotten: this is careful, for the
 * code does not ask it.
 */
final class LateralSums {

  /** Stronger when bent up and down. */
  private static final LateralSums UP_DOWN = new LateralSums("y", "z");

  /** Stronger when bent sideways. */
  private static final LateralSums SIDEWAYS = new LateralSums("z", "y");

  private static final String COMPRESSED =
      "compression, buckling, lateral buckling and bending together";

  final Formula tension;

  /** Buckling in the plane of the stronger bending. */
  final Formula strong;

  /** Buckling out of that plane. */
  final Formula weak;

  final Formula lateral;
  final Formula americanTension;
  final Formula americanCompression;

  /**
   * The sums of a member.
   *
   * @param upDown whether it is bent up and down about its stronger axis
   */
  static LateralSums of(boolean upDown) {
    return upDown ? UP_DOWN : SIDEWAYS;
  }

  private LateralSums(String s, String w) {
    String kStrong = "k_{c,%s}".formatted(s);
    String kWeak = "k_{c,%s}".formatted(w);
    String s1 = "σ_{m,%s}".formatted(s);
    String s2 = "σ_{m,%s}".formatted(w);
    tension =
        factored(stresses(tensile(), s1, s2), "k_{crit}")
            .as(
                "σ_0/f_{t,0} + max(%1$s/k_{crit} + 0.7*%2$s, 0.7*%1$s/k_{crit} + %2$s)/f_m"
                    .formatted(s1, s2))
            .source(Source.fromMemory("EN 1995-1-1", "6.2.3 and 6.3.3, eq. 6.33"));
    strong =
        factored(stresses(compressed(kStrong), s1, s2), "k_{crit}")
            .as(
                "σ_0/(%3$s*f_{c,0}) + %1$s/(k_{crit}*f_m) + 0.7*%2$s/f_m"
                    .formatted(s1, s2, kStrong))
            .source(columns(s));
    weak =
        factored(stresses(compressed(kWeak), s1, s2), "k_{crit}")
            .as("σ_0/(%3$s*f_{c,0}) + 0.7*%1$s/(k_{crit}*f_m) + %2$s/f_m".formatted(s1, s2, kWeak))
            .source(columns(w));
    lateral =
        factored(
                compressed(kWeak)
                    .where(s1, "bending stress about the stronger axis", Unit.MPA)
                    .where("f_m", "bending strength", Unit.MPA),
                "k_{crit}")
            .as("(%s/(k_{crit}*f_m))^2 + σ_0/(%s*f_{c,0})".formatted(s1, kWeak))
            .source(Source.fromMemory("EN 1995-1-1", "6.3.3, eq. 6.35"));
    americanTension =
        critical(factored(stresses(tensile(), s1, s2), "C_L"))
            .as("σ_0/f_{t,0} + %1$s/(C_L*f_m) + %2$s/(f_m*(1 - (%1$s/F_{bE})^2))".formatted(s1, s2))
            .source(Source.fromMemory("NDS", "3.9.1 and 3.9.2"));
    americanCompression =
        critical(factored(stresses(compressed("C_P"), s1, s2), "C_L"))
            .where("F_{cE,%s}".formatted(s), "critical stress in that plane", Unit.MPA)
            .where("F_{cE,%s}".formatted(w), "critical stress out of that plane", Unit.MPA)
            .as(
                ("(σ_0/(C_P*f_{c,0}))^2 + %1$s/(C_L*f_m*(1 - σ_0/F_{cE,%3$s}))"
                        + " + %2$s/(f_m*(1 - σ_0/F_{cE,%4$s} - (%1$s/F_{bE})^2))")
                    .formatted(s1, s2, s, w))
            .source(Source.fromMemory("NDS", "3.9.2, eq. 3.9-3"));
  }

  private static Source columns(String axis) {
    return Source.fromMemory(
        "EN 1995-1-1",
        "6.3.2, eq. 6.2%s, with k_crit of 6.3.3".formatted("y".equals(axis) ? "3" : "4"));
  }

  private static Formula.Builder tensile() {
    return Formula.define("u")
        .meaning("tension, lateral buckling and bending together")
        .where("σ_0", "tension stress", Unit.MPA)
        .where("f_{t,0}", "tension strength", Unit.MPA);
  }

  private static Formula.Builder compressed(String part) {
    return Formula.define("u")
        .meaning(COMPRESSED)
        .where("σ_0", "compression stress", Unit.MPA)
        .where(part, "part of the strength that buckling leaves", Unit.ONE)
        .where("f_{c,0}", "compression strength", Unit.MPA);
  }

  private static Formula.Builder stresses(Formula.Builder sum, String s1, String s2) {
    return sum.where(s1, "bending stress about the stronger axis", Unit.MPA)
        .where(s2, "bending stress about the weaker axis", Unit.MPA)
        .where("f_m", "bending strength", Unit.MPA);
  }

  private static Formula.Builder factored(Formula.Builder sum, String factor) {
    return sum.where(factor, "part of it that lateral buckling leaves", Unit.ONE);
  }

  private static Formula.Builder critical(Formula.Builder sum) {
    return sum.where("F_{bE}", "bending stress at which the member buckles laterally", Unit.MPA);
  }
}
