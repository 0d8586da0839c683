package org.stoutwork.joint.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.tenon.Splitting;
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
          Advice.LOOSE_RELISH, new Power("force that tears the relish out", 1),
          Advice.LOOSE_WIDTH, new Power("strength of the wedge", 1),
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
    if (note.followed()) {
      return Optional.empty();
    }
    Optional<Effect> own = ofItsOwn(note, joint, setting);
    if (own.isPresent()) {
      return own;
    }
    Power power = POWERS.get(note.advice());
    if (power != null) {
      return note.value() > 0
          ? Optional.of(
              new Effect(power.what(), Math.pow(note.nearest() / note.value(), power.exponent())))
          : Optional.empty();
    }
    OptionalDouble stiffness = stiffness(note, joint, setting);
    return stiffness.isPresent()
        ? Optional.of(new Effect("mean stiffness of the joint", stiffness.getAsDouble()))
        : Optional.empty();
  }

  /** What follows from more than one size: recalculated with the size that is advised. */
  private static Optional<Effect> ofItsOwn(Note note, Joint joint, JointSetting setting) {
    if (joint instanceof MortiseAndTenon tenon) {
      if (note.advice().equals(Advice.PEG_PLACE)) {
        double behind = tenon.length() - note.value();
        double then = tenon.length() - note.nearest();
        return behind > 0 && then > 0
            ? Optional.of(new Effect("force that tears the relish out", then / behind))
            : Optional.empty();
      }
      if (tenon.haunch().isPresent()) {
        return haunched(note, tenon, tenon.haunch().get(), setting);
      }
    }
    if (joint instanceof BoltedTenon bolted) {
      return bored(note, bolted, setting);
    }
    return Optional.empty();
  }

  private static Optional<Effect> haunched(
      Note note, MortiseAndTenon tenon, MortiseAndTenon.Haunch haunch, JointSetting setting) {
    double length = tenon.lengthInPost(setting.members());
    double above = setting.postAbove();
    MortiseAndTenon.Haunch changed = haunch;
    if (note.advice().equals(Advice.HAUNCH_LENGTH)) {
      changed = new MortiseAndTenon.Haunch(haunch.height(), Math.min(note.nearest(), length));
    } else if (note.advice().equals(Advice.HAUNCH_HEIGHT)) {
      double height = note.nearest() * setting.members().railDepth();
      changed = new MortiseAndTenon.Haunch(height, haunch.length());
    } else {
      return Optional.empty();
    }
    if (!(above > 0) || Double.isInfinite(above)) {
      return Optional.empty();
    }
    return Optional.of(
        new Effect(
            "force that shears the horn off",
            horn(tenon, length, above, changed) / horn(tenon, length, above, haunch)));
  }

  private static double horn(
      MortiseAndTenon tenon, double length, double above, MortiseAndTenon.Haunch haunch) {
    return Splitting.groovedHorn(
        Pad.blank(), length, tenon.mortiseWidth(), above, haunch.length(), haunch.height(), 1);
  }

  private static Optional<Effect> bored(Note note, BoltedTenon joint, JointSetting setting) {
    double bore = joint.bore();
    double thickness = joint.thickness();
    if (note.advice().equals(Advice.BORED_TENON)) {
      thickness = note.nearest() * bore;
    } else if (note.advice().equals(Advice.BOLT_HOLE)) {
      bore = joint.bolt().diameter() + note.nearest();
    } else {
      return Optional.empty();
    }
    List<Double> levers = joint.boreLevers(setting.members());
    double now =
        new BoredTenon(joint.thickness(), joint.height(), joint.bore(), levers)
            .shearThickness(Pad.blank());
    double then =
        new BoredTenon(thickness, joint.height(), bore, levers).shearThickness(Pad.blank());
    return Optional.of(new Effect("shear of the tenon beside the bore", then / now));
  }

  /** Mean in-plane stiffness with the size that is advised, over that of the joint as it is. */
  private static OptionalDouble stiffness(Note note, Joint joint, JointSetting setting) {
    Optional<Joint> changed = new Followed(note, setting.members()).of(joint);
    double now = changed.isEmpty() ? 0 : mean(joint, setting);
    return now == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(mean(changed.get(), setting) / now);
  }

  private static double mean(Joint joint, JointSetting setting) {
    return JointStiffness.of(joint, setting, Pad.blank()).mean().rotInPlane();
  }
}
