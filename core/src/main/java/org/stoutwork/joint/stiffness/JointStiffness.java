package org.stoutwork.joint.stiffness;

import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/**
 * The stiffness of a joint as a range. The springs stand at the shoulder: the rail is a beam from
 * the shoulder on, the post a beam of gross section on its centre line, and a rigid arm of half the
 * post's depth joins the two. Use that definition and no other; with the rail running to the post's
 * centre line the joint would be about 6 to 10 % stiffer.
 *
 * @param low springs of a joint at its worst
 * @param mean springs of an ordinary joint
 * @param high springs of a joint at its best
 * @param reason why the range is as wide as it is
 * @param freeRotation to either side before the joint resists at all, rad
 */
public record JointStiffness(
    SpringSet low, SpringSet mean, SpringSet high, String reason, double freeRotation) {

  /** Checks that low, mean and high are in order, spring by spring. */
  public JointStiffness {
    if (!low.nowhereStifferThan(mean) || !mean.nowhereStifferThan(high)) {
      throw new IllegalArgumentException(
          "springs must not fall from low to mean to high: %s, %s, %s".formatted(low, mean, high));
    }
    if (!(freeRotation >= 0)) {
      throw new IllegalArgumentException("free rotation cannot be " + freeRotation);
    }
  }

  /**
   * The stiffness of a joint in its setting.
   *
   * @throws org.stoutwork.joint.JointFault if the pieces leave no room for the joint
   */
  public static JointStiffness of(Joint joint, JointSetting setting, Pad pad) {
    joint.requireFits(setting.members());
    return joint.fold(new ByKind(setting, pad));
  }

  private static final Source STATED = Source.yours("stated joint stiffness");

  private record ByKind(JointSetting setting, Pad pad) implements Joint.Cases<JointStiffness> {
    @Override
    public JointStiffness mortiseAndTenon(MortiseAndTenon joint) {
      return TenonStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness bridle(Bridle joint) {
      return BridleStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness boltedTenon(BoltedTenon joint) {
      return BoltedStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness looseWedgeTenon(LooseWedgeTenon joint) {
      return LooseWedgeStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness halfLap(HalfLap joint) {
      return LapStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness dowelledButt(DowelledButt joint) {
      return DowelStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness housing(Housing joint) {
      return HousingStiffness.of(joint, setting, pad);
    }

    @Override
    public JointStiffness screwedButt(ScrewedButt joint) {
      return ScrewStiffness.butt(joint, setting, pad);
    }

    @Override
    public JointStiffness statedSpring(StatedSpring joint) {
      Range stated =
          new Range(joint.low(), joint.mean(), joint.high())
              .noted(pad, "K", "rotation in the plane of the frame", Unit.N_MM_PER_RAD, STATED);
      Range rigid = Range.rigid();
      return new Six(rigid, rigid, rigid, stated, rigid, rigid)
          .joint(pad, "stated by you; the other five springs are taken as rigid", 0);
    }
  }
}
