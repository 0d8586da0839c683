package org.stoutwork.joint.stiffness;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/** The ranges of the six springs, put together level by level. */
record Six(Range axial, Range shear, Range across, Range inPlane, Range vertical, Range torsion) {

  static final Source JUDGED = Source.projectDefault("judgement, wide on purpose");

  /** Shares of the closed in-plane stiffness for rotation in plan: low, mean, high. */
  private static final double[] SIDEWAYS = {0.04, 0.1, 0.3};

  /** Rotation in plan of a joint whose cheeks are glued, from the closed in-plane stiffness. */
  static Range sidewaysGlued(double closed) {
    return Range.of(closed, SIDEWAYS[0] * 0.35, SIDEWAYS[1] * 0.75, SIDEWAYS[2]);
  }

  /** Rotation in plan, or twist, of a joint held by contact alone. */
  static Range sidewaysDry(double closed) {
    return Range.of(closed, 0, SIDEWAYS[1] * 0.5, SIDEWAYS[2]);
  }

  JointStiffness joint(Pad pad, String reason, double freeRotation) {
    axial.noted(pad, "k_N", "spring along the rail", Unit.N_PER_MM, JUDGED);
    shear.noted(pad, "k_V", "spring along the post", Unit.N_PER_MM, JUDGED);
    across.noted(pad, "k_Q", "spring across the frame", Unit.N_PER_MM, JUDGED);
    vertical.noted(pad, "K_z", "spring for rotation in plan", Unit.N_MM_PER_RAD, JUDGED);
    torsion.noted(pad, "K_T", "spring for twist of the rail", Unit.N_MM_PER_RAD, JUDGED);
    pad.remark("Range of stiffness: " + reason + ".");
    return new JointStiffness(low(), mean(), high(), reason, freeRotation);
  }

  private SpringSet low() {
    return new SpringSet(
        axial.low(), shear.low(), across.low(), inPlane.low(), vertical.low(), torsion.low());
  }

  private SpringSet mean() {
    return new SpringSet(
        axial.mean(), shear.mean(), across.mean(), inPlane.mean(), vertical.mean(), torsion.mean());
  }

  private SpringSet high() {
    return new SpringSet(
        axial.high(), shear.high(), across.high(), inPlane.high(), vertical.high(), torsion.high());
  }
}
