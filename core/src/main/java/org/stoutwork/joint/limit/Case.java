package org.stoutwork.joint.limit;

import org.stoutwork.fastener.Documents;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What every kind of joint is judged with.
 *
 * @param setting what the joint connects
 * @param strength of the pieces, and the family
 * @param forces on the joint
 * @param limits where the findings go
 */
public record Case(
    JointSetting setting, JointStrength strength, JointForces forces, Limits limits) {

  /** How far the fibres beside a bearing help, EN 1995-1-1, mm. */
  private static final double SPREAD = 30;

  private static final Formula HELPED_EC5 =
      Formula.define("f_{c,sh}")
          .meaning("bearing strength with the fibres beyond the shoulder")
          .unit(Unit.MPA)
          .where("f_{c,θ}", "bearing strength", Unit.MPA)
          .where("a", "pressed depth", Unit.MM)
          .where("e", "reach of the fibres on one side", Unit.MM)
          .as("f_{c,θ}*(a + min(e, a))/a")
          .source(Documents.ec5("6.1.5, A1; on the outer side only"));

  private static final Formula HELPED_NDS =
      Formula.define("F_{c,sh}")
          .meaning("bearing strength with the bearing area factor")
          .unit(Unit.MPA)
          .where("F_{c,θ}", "bearing strength", Unit.MPA)
          .where("l_b", "pressed depth", Unit.IN)
          .fitted("F_{c,θ}*(l_b + 0.375)/l_b")
          .source(Documents.nds("3.10.4"));

  private static final Formula EVENLY =
      Formula.define("r_h")
          .meaning("how much more the fibres help the pressed part than the whole shoulder")
          .where("f_a", "strength under the pressed part", Unit.MPA)
          .where("f_d", "strength under the whole depth", Unit.MPA)
          .as("f_a/f_d")
          .source(Source.derived("both use their own strength: the sum of the two uses"));

  /** Shorthand. */
  public Joint.Members members() {
    return setting.members();
  }

  /** Shorthand. */
  public TimberStrength rail() {
    return strength.rail();
  }

  /** Shorthand. */
  public TimberStrength post() {
    return strength.post();
  }

  /** Shorthand. */
  public StrengthFamily family() {
    return strength.family();
  }

  /** Design strength of a glue line between rail and post, whose grains cross. */
  public double crossedGlue(Pad pad) {
    double mean =
        rail().shearMean() > 0 && post().shearMean() > 0
            ? Math.min(rail().shearMean(), post().shearMean())
            : 0;
    Glue glue = setting.glue();
    if (!glue.structural()) {
      pad.remark(
          "%s is no structural glue to EN 301 (%s): this is a result of tests, no code capacity."
              .formatted(glue.name(), glue.grade().words()));
    }
    StrengthFamily rules = family();
    if (strength.lasting() && glue.creeps()) {
      pad.remark(
          glue.name() + " gives way under lasting load: taken with the factor of permanent load.");
      rules = GlueDesign.permanent(rules);
    }
    double sound = GlueDesign.crossed(pad, mean, Math.min(rail().fV(), post().fV()), rules);
    double line = strength.gluesPoorly() ? GlueDesign.poor(pad, sound) : sound;
    return Math.min(line, GlueDesign.classLimit(pad, glue.grade(), rules, line));
  }

  /** Bearing strength of the post behind the shoulder, at the rail's angle to its grain. */
  public double postBearing(Pad pad) {
    return Bearing.atAngle(pad, post().fC0(), post().fC90(), setting.angle());
  }

  /** Bearing strength of the post under a pressed shoulder, helped by the fibres beyond it. */
  public double shoulderBearing(Pad pad, double pressedDepth) {
    double bare = postBearing(pad);
    return family() instanceof StrengthFamily.Allowable
        ? pad.take(HELPED_NDS, bare, Unit.MM.convert(pressedDepth, Unit.IN))
        : pad.take(HELPED_EC5, bare, pressedDepth, SPREAD);
  }

  /**
   * By what an even pressure on the whole depth counts more than one on the pressed part: the
   * fibres beyond the shoulder help it less.
   */
  public double evenly(Pad pad, double pressedDepth, double wholeDepth) {
    return pad.take(
        EVENLY,
        shoulderBearing(Pad.blank(), pressedDepth),
        shoulderBearing(Pad.blank(), wholeDepth));
  }

  /** Bearing strength of the tenon's edge: the softer of side grain and mortise end. */
  public double edgeBearing(Pad pad) {
    double tenon = Bearing.atAngle(pad, rail().fC0(), rail().fC90(), setting.angle());
    double mortise = Bearing.atAngle(pad, post().fC0(), post().fC90(), 90 - setting.angle());
    return Math.min(tenon, mortise);
  }
}
