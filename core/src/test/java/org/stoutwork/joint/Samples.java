package org.stoutwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.advice.DowelProportions;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.setting.TimberStrength;

/** Joints and settings for tests; sizes differ in every direction on purpose. */
public final class Samples {

  public static final TimberStiffness BEECH =
      new TimberStiffness(12205, 1858, 774, 899, 595, 195, 0.45, 0.51, 720);
  public static final TimberStiffness FIR =
      new TimberStiffness(13400, 911, 670, 858, 1045, 94, 0.292, 0.449, 500);
  public static final Joint.Members MEMBERS = new Joint.Members(120, 45, 70, 56);

  public static final StrengthFamily PARTIAL = new StrengthFamily.PartialFactors(0.8, 1.3, 1.25);
  public static final StrengthFamily ALLOWABLE = new StrengthFamily.Allowable(1, 2.3);

  private Samples() {}

  public static JointSetting setting() {
    return setting(MEMBERS, Glue.PVA);
  }

  public static JointSetting setting(Joint.Members members, Glue glue) {
    return new JointSetting(
        members, FaceGrain.TANGENTIAL, FaceGrain.RADIAL, BEECH, FIR, glue, 40, 300, 90);
  }

  public static JointStrength strength(StrengthFamily family) {
    return strength(family, 1);
  }

  public static JointStrength strength(StrengthFamily family, double factor) {
    TimberStrength rail =
        new TimberStrength(
            24.6 * factor,
            14.8 * factor,
            0.37 * factor,
            16.6 * factor,
            3.4 * factor,
            2.6 * factor,
            13.9 * factor,
            550,
            0.64,
            true,
            12205,
            103);
    TimberStrength post =
        new TimberStrength(
            14.8 * factor,
            8.9 * factor,
            0.25 * factor,
            12.9 * factor,
            1.5 * factor,
            2.5 * factor,
            8.0 * factor,
            350,
            0.48,
            false,
            11000,
            85);
    return new JointStrength(rail, post, family, true);
  }

  public static Fit pegged(boolean glued, double diameter, double offset) {
    return new Fit.Pegged(glued, new Peg(diameter, TenonProportions.OAK), 1, offset, 22, 0);
  }

  public static MortiseAndTenon tenon(Fit fit) {
    return new MortiseAndTenon(80, 16, 50, 18, 1.5, 1, false, Optional.empty(), fit);
  }

  /** One of every kind and fit. */
  public static List<Joint> all() {
    TenonProportions usual = TenonProportions.forRail(MEMBERS);
    List<Joint> all = new ArrayList<>();
    all.add(tenon(new Fit.Glued()));
    all.add(tenon(new Fit.Dry(0.3)));
    all.add(tenon(pegged(false, 8, 1)));
    all.add(tenon(pegged(true, 8, 0)));
    all.add(usual.drawbored());
    all.add(usual.wedged(true, MEMBERS));
    all.add(usual.wedged(false, MEMBERS));
    all.add(usual.haunched(new Fit.Glued(), MEMBERS));
    all.add(usual.twin(new Fit.Glued(), MEMBERS));
    all.add(TenonProportions.bridle(MEMBERS, true));
    all.add(new Bridle(15, 1, false, new Fit.Dry(0)));
    all.add(new Bridle(9, 2, true, pegged(false, 6, 0.5)));
    all.add(usual.bolted(MEMBERS, 3000));
    all.add(twoBolts(usual));
    all.add(usual.looseWedge());
    all.add(new HalfLap(22, true, true));
    all.add(new HalfLap(22, false, false));
    all.add(dowels(MEMBERS));
    all.add(new Housing(12, true));
    all.add(new Housing(12, false));
    all.add(new HalfLap(22, false, false, Optional.of(screws(44, 3))));
    all.add(new HalfLap(22, true, false, Optional.of(screws(49, 1))));
    all.add(new Housing(12, false, Optional.of(screws(115, 2))));
    all.add(new ScrewedButt(screws(125, 2)));
    all.add(new ScrewedButt(new ScrewSet(CoachScrew.plain(8, 135, 50, 24), 2, 35, 5)));
    all.add(new StatedSpring(5e6, 2e7, 4e7, OptionalDouble.of(4e5)));
    return all;
  }

  /** The usual dowels in a rail of the samples' beech. */
  static DowelledButt dowels(Joint.Members members) {
    return new DowelProportions(members, 0.64, true, false).usual();
  }

  static ScrewSet screws(double length, int count) {
    return new ScrewSet(WoodScrew.plain(4.5, length, length * 0.6, 9), count, 27, 2.5);
  }

  private static BoltedTenon twoBolts(TenonProportions usual) {
    BoltedTenon one = usual.bolted(MEMBERS, 0);
    return new BoltedTenon(
        one.height(),
        one.thickness(),
        one.length(),
        one.shoulderBelow(),
        one.bolt(),
        2,
        50,
        new BoltedTenon.Nut(18, 25, 55, false),
        0);
  }
}
