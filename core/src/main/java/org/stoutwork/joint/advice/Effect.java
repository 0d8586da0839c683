package org.stoutwork.joint.advice;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.JointFault;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/**
 * What following a piece of advice would change, calculated.
 *
 * @param what is changed, such as {@code stiffness of the joint}
 * @param ratio of it if the advice were followed, over what it is now
 */
public record Effect(String what, double ratio) {

  /** How a capacity or a strain follows a size, by statics. */
  private record Power(String what, double exponent) {}

  private static final Map<Advice, Power> POWERS =
      Map.of(
          Advice.RELISH, new Power("force that tears the relish out", 1),
          Advice.HORN, new Power("force that shears the horn off", 1),
          Advice.PEG, new Power("shear strength of the peg", 2),
          Advice.DRAWBORE, new Power("strain of the peg", 1),
          Advice.WEDGE, new Power("times that friction holds the wedge", -1),
          Advice.HOUSING, new Power("bearing of the end in its housing", 1),
          Advice.DOWEL, new Power("pull of a dowel", 1),
          Advice.WASHER, new Power("bearing of the washer on the wood", 2));

  /**
   * The effect of following a note, going no further than the nearest value that does.
   *
   * @return empty if the joint follows the advice already, cannot, or nothing is known
   */
  public static Optional<Effect> of(Note note, Joint joint, JointSetting setting) {
    if (note.followed() || !(note.value() > 0)) {
      return Optional.empty();
    }
    Power power = POWERS.get(note.advice());
    if (power != null) {
      double ratio = Math.pow(nearest(note) / note.value(), power.exponent());
      return Optional.of(new Effect(power.what(), ratio));
    }
    OptionalDouble stiffness =
        joint instanceof MortiseAndTenon tenon
            ? onStiffness(note, tenon, setting)
            : OptionalDouble.empty();
    return stiffness.isPresent()
        ? Optional.of(new Effect("mean stiffness of the joint", stiffness.getAsDouble()))
        : Optional.empty();
  }

  private static double nearest(Note note) {
    return note.value() < note.advice().least() ? note.advice().least() : note.advice().most();
  }

  /**
   * Mean in-plane stiffness if the advice were followed, over that of the joint as it is; empty if
   * the advice speaks of something else, is followed already, or cannot be followed here.
   */
  public static OptionalDouble onStiffness(Note note, MortiseAndTenon joint, JointSetting setting) {
    if (note.followed()) {
      return OptionalDouble.empty();
    }
    double near = nearest(note);
    MortiseAndTenon changed;
    if (note.advice().equals(Advice.TENON_THICKNESS)) {
      changed = with(joint, near * setting.members().railThickness(), joint.length());
    } else if (note.advice().equals(Advice.TENON_LENGTH)) {
      changed = with(joint, joint.thickness(), near * setting.members().postDepth());
    } else if (note.advice().equals(Advice.CHEEK)) {
      changed = with(joint, thinner(joint, note.value() - near), joint.length());
    } else {
      return OptionalDouble.empty();
    }
    return changed.thickness() > 0 ? ratio(changed, joint, setting) : OptionalDouble.empty();
  }

  /** A tenon so much thinner that its cheeks are what is advised. */
  private static double thinner(MortiseAndTenon joint, double tooMuch) {
    return Math.max(0, joint.thickness() + 2 * tooMuch / (2 * joint.count() - 1));
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
