package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Fasteners through two pieces laid on each other: they turn about their middle and are pulled
 * apart. All forces are taken adverse.
 *
 * @param count of the fasteners
 * @param axial along the rail, N
 * @param shear along the post, N
 * @param moment in the plane of the lap, N·mm
 * @param apart what pulls the two pieces apart, N
 * @param farAlong distance of the outermost from the middle, along the rail, mm
 * @param farAcross the same along the post, mm
 * @param squares sum of the squared distances from the middle, mm²
 */
public record LapForces(
    int count,
    double axial,
    double shear,
    double moment,
    double apart,
    double farAlong,
    double farAcross,
    double squares)
    implements FastenerForces {

  private static final Formula SHEAR =
      Formula.define("F_v")
          .meaning("shear of the outermost fastener")
          .unit(Unit.N)
          .where("N", "force along the rail", Unit.N)
          .where("V", "force along the post", Unit.N)
          .where("n", "fasteners", Unit.ONE)
          .where("M", "moment", Unit.N_MM)
          .where("x", "its distance from the middle along the rail", Unit.MM)
          .where("z", "its distance from the middle along the post", Unit.MM)
          .where("S_r", "sum of the squared distances", Unit.MM2)
          .as("sqrt((N/n + M*z/S_r)^2 + (V/n + M*x/S_r)^2)")
          .source(Source.derived("statics: fasteners alike that turn about their middle"));

  private static final Formula ALONE =
      Formula.define("F_v")
          .meaning("shear of the fastener")
          .unit(Unit.N)
          .where("N", "force along the rail", Unit.N)
          .where("V", "force along the post", Unit.N)
          .as("sqrt(N^2 + V^2)")
          .source(Source.derived("statics: one fastener is a pin"));

  @Override
  public double pullOfOne(Pad pad, StrengthFamily family) {
    return Pulled.share(pad, apart, count, family);
  }

  @Override
  public double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening) {
    return count == 1
        ? pad.take(ALONE, axial, shear)
        : pad.take(SHEAR, axial, shear, count, moment, farAlong, farAcross, squares);
  }
}
