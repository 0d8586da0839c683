package org.stoutwork.check.member;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/** What dogs do to the holes and to the top when work is pressed between them. */
final class DogFormulas {

  private static final Source STATICS = Source.derived("statics");

  static final Formula WALL =
      Formula.define("σ_c")
          .meaning("greatest pressure on the wall of the hole, at its mouth")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("d", "width of a dog", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .as("γ*F/(d*t)*(4 + 6*a/t)")
          .source(Source.derived("statics of a stiff dog, pressure straight over its depth"));

  static final Formula TEAR =
      Formula.define("τ")
          .meaning("shear beside the wood behind the hole")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("e", "wood behind the hole, to the next or to the end of the boards", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("k_{cr}", "part of the thickness without checks", Unit.ONE)
          .as("γ*F/(e*t*k_{cr})")
          .source(
              Source.derived(
                  "statics of two planes, stress twice its mean at the hole and falling to the end"));

  static final Formula STRIP =
      Formula.define("b")
          .meaning("width of top that takes it, less the hole")
          .unit(Unit.MM)
          .where("y", "row from the nearer edge of the top", Unit.MM)
          .where("d", "width of all holes side by side in it", Unit.MM)
          .as("2*y - d")
          .source(Source.projectDefault("no more than lies evenly about the row"));

  static final Formula PULLED =
      Formula.define("σ_t")
          .meaning("tension along the bench between the dogs, which the work pushes apart")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("b", "width that takes it", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .as("γ*F/(b*t)")
          .source(STATICS);

  static final Formula BEND =
      Formula.define("σ_m")
          .meaning("bending up between the dogs, for the work presses above the middle of the top")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("b", "width that takes it", Unit.MM)
          .where("k", "stress in the layer over that of a solid top", Unit.ONE)
          .as("6*k*γ*F*(t/2 + a)/(b*t^2)")
          .source(STATICS);

  static final Formula SUM =
      Formula.define("u_1")
          .meaning("utilisation by both stresses together")
          .where("σ_t", "tension along the bench", Unit.MPA)
          .where("f_t", "tension strength", Unit.MPA)
          .where("σ_m", "bending up", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("σ_t/f_t + σ_m/f_m")
          .source(Source.derived("stresses in one direction add up"));

  static final Formula BOW =
      Formula.define("w")
          .meaning("by how much the whole top bows up between the outermost holes")
          .unit(Unit.MM)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("L", "between the outermost holes, at most the longest bay", Unit.MM)
          .where("E", "mean modulus along the bench", Unit.MPA)
          .where("B", "width of the top", Unit.MM)
          .as("12*F*(t/2 + a)*L^2/(8*E*B*t^3)")
          .source(Source.derived("beam under an even moment"));

  private DogFormulas() {}
}
