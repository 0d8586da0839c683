package org.stoutwork.joint.capacity;

import org.stoutwork.joint.Joint;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.working.Pad;

/** What every kind of joint is judged with. */
record Case(JointSetting setting, JointStrength strength, JointForces forces, Limits limits) {

  Joint.Members members() {
    return setting.members();
  }

  TimberStrength rail() {
    return strength.rail();
  }

  TimberStrength post() {
    return strength.post();
  }

  StrengthFamily family() {
    return strength.family();
  }

  /** Design strength of a glue line between rail and post, whose grains cross. */
  double crossedGlue(Pad pad) {
    double mean =
        rail().shearMean() > 0 && post().shearMean() > 0
            ? Math.min(rail().shearMean(), post().shearMean())
            : 0;
    if (strength.lasting() && setting.glue().creeps()) {
      pad.remark(
          setting.glue().name()
              + " gives way under lasting load: take the factor of permanent load.");
    }
    if (!setting.glue().structural()) {
      pad.remark(
          setting.glue().name()
              + " is no structural glue to EN 301: this is a result of tests, no code capacity.");
    }
    return GlueDesign.crossed(pad, mean, Math.min(rail().fV(), post().fV()), family());
  }

  /** Bearing strength of the post behind the shoulder, at the rail's angle to its grain. */
  double postBearing(Pad pad) {
    return Bearing.atAngle(pad, post().fC0(), post().fC90(), setting.angle());
  }

  /** Bearing strength of the tenon's edge: the softer of side grain and mortise end. */
  double edgeBearing(Pad pad) {
    double tenon = Bearing.atAngle(pad, rail().fC0(), rail().fC90(), setting.angle());
    double mortise = Bearing.atAngle(pad, post().fC0(), post().fC90(), 90 - setting.angle());
    return Math.min(tenon, mortise);
  }
}
