package org.stoutwork.joint.screwed;

import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Fasteners in a row through one piece into the end of another: the end presses with one edge and
 * the fasteners pull against it. All forces are taken adverse.
 *
 * @param count of the fasteners
 * @param tension that pulls the end away, N
 * @param moment in the plane of the row, N·mm
 * @param sideways moment across the row, N·mm
 * @param shear across the fasteners, N
 * @param squares sum of the squared levers to the pressed edge, mm²
 * @param farthest lever, mm
 * @param half half of the thickness of the end, the lever of the moment across the row, mm
 */
public record ButtForces(
    int count,
    double tension,
    double moment,
    double sideways,
    double shear,
    double squares,
    double farthest,
    double half)
    implements FastenerForces {

  private static final Formula TURNED =
      Formula.define("F_t")
          .meaning("pull of the farthest fastener from turning")
          .unit(Unit.N)
          .where("M", "moment", Unit.N_MM)
          .where("z_max", "lever of the farthest", Unit.MM)
          .where("S_2", "sum of squared levers", Unit.MM2)
          .where("M_z", "moment across the row", Unit.N_MM)
          .where("n", "fasteners", Unit.ONE)
          .where("b_2", "half of the thickness", Unit.MM)
          .as("M*z_max/S_2 + M_z/(n*b_2)")
          .source(Source.derived("statics: pull grows with the lever to the pressed edge"));

  private static final Formula ALL =
      Formula.define("F_ax")
          .meaning("pull of the farthest fastener")
          .unit(Unit.N)
          .where("F_1", "from pull", Unit.N)
          .where("F_t", "from turning", Unit.N)
          .as("F_1 + F_t")
          .source(Source.derived("statics"));

  private static final Formula SHARED =
      Formula.define("F_v")
          .meaning("shear of one fastener")
          .unit(Unit.N)
          .where("V", "shear", Unit.N)
          .where("n", "fasteners", Unit.ONE)
          .as("V/n")
          .source(Source.derived("statics: across the row all share alike"));

  @Override
  public double pullOfOne(Pad pad, StrengthFamily family) {
    double drawn = Pulled.share(pad, tension, count, family);
    double turned = pad.take(TURNED, moment, farthest, squares, sideways, count, half);
    return pad.take(ALL, drawn, turned);
  }

  @Override
  public double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening) {
    return pad.take(SHARED, shear, count);
  }
}
