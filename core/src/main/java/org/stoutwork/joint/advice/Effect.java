package org.stoutwork.joint.advice;

import java.util.OptionalDouble;
import org.stoutwork.joint.JointFault;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/** What following a piece of advice would do to the stiffness of a tenon. */
public final class Effect {

  private Effect() {}

  /**
   * Mean in-plane stiffness if the advice were followed, over that of the joint as it is; empty if
   * the advice speaks of something else, is followed already, or cannot be followed here.
   */
  public static OptionalDouble onStiffness(Note note, MortiseAndTenon joint, JointSetting setting) {
    if (note.followed()) {
      return OptionalDouble.empty();
    }
    double near =
        note.value() < note.advice().least() ? note.advice().least() : note.advice().most();
    MortiseAndTenon changed;
    if (note.advice().equals(Advice.TENON_THICKNESS)) {
      changed = with(joint, near * setting.members().railThickness(), joint.length());
    } else if (note.advice().equals(Advice.TENON_LENGTH)) {
      changed = with(joint, joint.thickness(), near * setting.members().postDepth());
    } else {
      return OptionalDouble.empty();
    }
    return ratio(changed, joint, setting);
  }

  private static OptionalDouble ratio(
      MortiseAndTenon changed, MortiseAndTenon joint, JointSetting setting) {
    double now = mean(joint, setting);
    if (now == 0) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(mean(changed, setting) / now);
    } catch (JointFault noRoom) {
      return OptionalDouble.empty();
    }
  }

  private static double mean(MortiseAndTenon joint, JointSetting setting) {
    return JointStiffness.of(joint, setting, Pad.blank()).mean().rotInPlane();
  }

  private static MortiseAndTenon with(MortiseAndTenon j, double thickness, double length) {
    return new MortiseAndTenon(
        j.height(),
        thickness,
        length,
        j.shoulderBelow(),
        j.offCentre(),
        j.count(),
        j.through(),
        j.haunch(),
        j.fit());
  }
}
