package org.stoutwork.reference.joints;

import java.util.Locale;
import java.util.Optional;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.PegWood;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.glue.GlueLine;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.regression.DowelWithdrawal;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.working.Pad;

/**
 * What the product says of a row, at mean level: clear-wood mean shear strength, no duration, no
 * partial factor, and the step from mean to 5 % value taken back. Moments in N·m, pulls in N,
 * stresses in MPa, stiffness in N·m per radian.
 */
final class SeriesPrediction {

  private static final Pad PAD = Pad.blank();

  /** Elastic values of beech; they touch the row of stiffnesses only, and there they drop out. */
  private static final TimberStiffness ELASTIC =
      new TimberStiffness(12205, 1858, 774, 899, 595, 195, 0.45, 0.51, 720);

  private static final PegWood BEECH = new PegWood("beech", 12200, 103, 0.64, 680);

  /** Tension across the grain of the spruces of the Wood Handbook at 12 %, 2.4 to 2.6 MPa. */
  private static final double SPRUCE_APART = 2.5;

  private static final StrengthFamily MEANS = new StrengthFamily.PartialFactors(1, 1, 1);

  private SeriesPrediction() {}

  static double of(SeriesRow row) {
    return switch (row.in("shape")) {
      case "tenon moment" -> moment(tenon(row, glued()), row, "glue line under moment");
      case "tenon pull" -> pull(row);
      case "dowels moment" -> moment(dowels(row), row, "dowels pulling out under moment");
      case "bridle moment" -> bridleMoment(row);
      case "dowel line" -> GlueDesign.mean(PAD, GlueLine.crossed(PAD, row.shear("post_wood")));
      case "dowel regression" -> regression(row);
      case "line along" -> GlueDesign.mean(PAD, GlueLine.angled(PAD, row.shear("post_wood"), 0));
      case "tenon stiffness" -> stiffness(row);
      default -> throw new IllegalArgumentException("no such shape: " + row.in("shape"));
    };
  }

  private static Fit glued() {
    return new Fit.Glued();
  }

  private static MortiseAndTenon tenon(SeriesRow row, Fit fit) {
    Optional<MortiseAndTenon.Haunch> haunch =
        row.in("haunch_h_mm").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new MortiseAndTenon.Haunch(row.number("haunch_h_mm"), row.number("haunch_l_mm")));
    return new MortiseAndTenon(
        row.number("h_mm"),
        row.number("t_mm"),
        row.number("l_mm"),
        row.number("shoulder_mm"),
        0,
        1,
        false,
        haunch,
        fit);
  }

  private static DowelledButt dowels(SeriesRow row) {
    double l = row.number("l_mm");
    return new DowelledButt(
        new Peg(row.number("t_mm"), BEECH), 2, l, l, row.number("h_mm"), row.number("shoulder_mm"));
  }

  private static Bridle bridle(SeriesRow row) {
    return new Bridle(row.number("t_mm"), 2, true, glued());
  }

  private static double moment(Joint joint, SeriesRow row, String failure) {
    double moment = row.in("sense").equals("-") ? -1e5 : 1e5;
    return capacity(joint, row, new JointForces(0, 0, 0, moment, 0, 0), failure) / 1000;
  }

  /** The least of glue line, tongue and cheeks. */
  private static double bridleMoment(SeriesRow row) {
    JointForces forces = new JointForces(0, 0, 0, row.in("sense").equals("-") ? -1e5 : 1e5, 0, 0);
    TimberStrength rail = means(row, "rail_wood");
    JointStrength with = new JointStrength(rail, means(row, "post_wood"), MEANS, false);
    JointSetting setting = JointSetting.square(row.members(), ELASTIC, ELASTIC);
    double least = Double.POSITIVE_INFINITY;
    for (JointLimit limit :
        JointCapacities.utilisations(bridle(row), setting, with, forces, false)) {
      if (limit.demand() > 0 && !limit.failure().equals("glue line at its worst corner")) {
        double nm = Math.abs(forces.moment()) / limit.utilisation() / 1000 * atMean(limit);
        System.out.printf(Locale.ROOT, "%s: %s %.0f N·m%n", row.in("id"), limit.failure(), nm);
        least = Math.min(least, nm);
      }
    }
    return least;
  }

  /** Takes back the step to the 5 % value of glue, and the cracks that no new specimen has. */
  private static double atMean(JointLimit limit) {
    if (limit.failure().startsWith("glue line")) {
      return 1 / GlueDesign.lower(PAD, 1, GlueDesign.COV);
    }
    return limit.failure().contains("shearing") ? 1 / MEANS.crackFactor() : 1;
  }

  /** Clear-wood means; tension across the grain of spruces where the wood's own is not known. */
  private static TimberStrength means(SeriesRow row, String column) {
    double shear = row.shear(column);
    double bending = row.bending(column);
    return new TimberStrength(
        bending, bending, SPRUCE_APART, 27, 5.5, shear, shear, 550, 0.6, true, ELASTIC.eL(), 100);
  }

  private static double pull(SeriesRow row) {
    return capacity(
        tenon(row, glued()),
        row,
        new JointForces(1000, 0, 0, 0, 0, 0),
        "withdrawal of the glued cheeks");
  }

  private static double capacity(Joint joint, SeriesRow row, JointForces forces, String failure) {
    JointSetting setting = JointSetting.square(row.members(), ELASTIC, ELASTIC);
    JointStrength with =
        new JointStrength(
            strength(row.shear("rail_wood")), strength(row.shear("post_wood")), MEANS, false);
    double lower =
        JointCapacities.utilisations(joint, setting, with, forces, false).stream()
            .filter(limit -> limit.failure().equals(failure))
            .findFirst()
            .orElseThrow()
            .capacity();
    return lower / GlueDesign.lower(PAD, 1, GlueDesign.COV);
  }

  /** Only the mean shear strength enters the limits compared. */
  private static TimberStrength strength(double shear) {
    return new TimberStrength(40, 24, 0.6, 27, 5.5, 4.2, shear, 550, 0.6, true, ELASTIC.eL(), 100);
  }

  private static double regression(SeriesRow row) {
    double d = row.number("t_mm");
    double l = row.number("l_mm");
    double shear = row.shear("post_wood");
    return DowelWithdrawal.mean(PAD, d, l, shear, shear, 1).orElseThrow() / (Math.PI * d * l);
  }

  private static double stiffness(SeriesRow row) {
    JointSetting setting = JointSetting.square(row.members(), ELASTIC, ELASTIC);
    return JointStiffness.of(tenon(row, new Fit.Dry(0)), setting, PAD).mean().rotInPlane() / 1000;
  }
}
