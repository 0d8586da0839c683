package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Fasteners through two pieces laid on each other: they turn about their centre and are pulled
 * apart. All forces are taken adverse.
 *
 * @param count of the fasteners
 * @param axial along the rail, N
 * @param shear along the post, N
 * @param moment in the plane of the lap, N·mm
 * @param apart what pulls the two pieces apart, N
 * @param offCentre distance of their centre from the middle of the lap, along the rail, mm
 * @param farAlong distance of the outermost from their centre, along the rail, mm
 * @param farAcross the same along the post, mm
 * @param squares sum of the squared distances from their centre, mm²
 */
public record LapForces(
    int count,
    double axial,
    double shear,
    double moment,
    double apart,
    double offCentre,
    double farAlong,
    double farAcross,
    double squares)
    implements FastenerForces {

  private static final Formula TURNING =
      Formula.define("M_c")
          .meaning("moment about the centre of the fasteners")
          .unit(Unit.N_MM)
          .where("M", "moment", Unit.N_MM)
          .where("V", "force along the post", Unit.N)
          .where("e", "distance of their centre from the middle of the lap", Unit.MM)
          .as("M + V*e")
          .source(Source.derived("statics"));

  private static final Formula SHEAR =
      Formula.define("F_v")
          .meaning("shear of the outermost fastener")
          .unit(Unit.N)
          .where("N", "force along the rail", Unit.N)
          .where("V", "force along the post", Unit.N)
          .where("n", "fasteners", Unit.ONE)
          .where("M_c", "moment about their centre", Unit.N_MM)
          .where("x", "its distance from their centre along the rail", Unit.MM)
          .where("z", "its distance from their centre along the post", Unit.MM)
          .where("S_r", "sum of the squared distances", Unit.MM2)
          .as("sqrt((N/n + M_c*z/S_r)^2 + (V/n + M_c*x/S_r)^2)")
          .source(Source.derived("statics: fasteners alike that turn about their centre"));

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
    if (count == 1) {
      return pad.take(ALONE, axial, shear);
    }
    double turning = offCentre == 0 ? moment : pad.take(TURNING, moment, shear, offCentre);
    return pad.take(SHEAR, axial, shear, count, turning, farAlong, farAcross, squares);
  }
}
