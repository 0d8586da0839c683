package org.stoutwork.joint.capacity;

import java.util.List;
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
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.limit.Limits;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/** Front door of joint strength. */
public final class JointCapacities {

  private JointCapacities() {}

  /**
   * Every way the joint can fail under the forces, with demand, capacity and working, and the rules
   * of making that were looked at. The greatest {@link JointLimit#utilisation()} among the
   * strengths governs.
   *
   * @param keepWorkings whether lines are kept; leave out in sweeps
   * @throws org.stoutwork.joint.JointFault if the pieces leave no room for the joint
   */
  public static List<JointLimit> utilisations(
      Joint joint,
      JointSetting setting,
      JointStrength strength,
      JointForces forces,
      boolean keepWorkings) {
    joint.requireFits(setting.members());
    Limits limits = new Limits(keepWorkings);
    joint.fold(new ByKind(new Case(setting, strength, forces, limits)));
    return limits.list();
  }

  private record ByKind(Case with) implements Joint.Cases<Boolean> {
    @Override
    public Boolean mortiseAndTenon(MortiseAndTenon joint) {
      new TenonCapacity(joint, with).all();
      return true;
    }

    @Override
    public Boolean bridle(Bridle joint) {
      BridleCapacity.all(joint, with);
      return true;
    }

    @Override
    public Boolean boltedTenon(BoltedTenon joint) {
      BoltedCapacity.all(joint, with);
      return true;
    }

    @Override
    public Boolean looseWedgeTenon(LooseWedgeTenon joint) {
      LooseWedgeCapacity.all(joint, with);
      return true;
    }

    @Override
    public Boolean halfLap(HalfLap joint) {
      LapCapacity.lap(joint, with);
      return true;
    }

    @Override
    public Boolean dowelledButt(DowelledButt joint) {
      DowelCapacity.all(joint, with);
      return true;
    }

    @Override
    public Boolean housing(Housing joint) {
      LapCapacity.housing(joint, with);
      return true;
    }

    @Override
    public Boolean screwedButt(ScrewedButt joint) {
      ScrewedCapacity.butt(joint, with);
      return true;
    }

    @Override
    public Boolean statedSpring(StatedSpring joint) {
      joint
          .momentCapacity()
          .ifPresent(
              capacity ->
                  with.limits()
                      .strength(
                          "stated moment capacity",
                          "joint",
                          with.forces().moment(),
                          Unit.N_MM,
                          pad ->
                              pad.given(
                                  "M_R",
                                  "stated moment capacity",
                                  capacity,
                                  Unit.N_MM,
                                  Source.yours("stated joint"))));
      return true;
    }
  }
}
