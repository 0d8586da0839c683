package org.stoutwork.joint.stiffness;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.TenonSpring;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** A butt joint with glued dowels: the pulled dowels and the pressed end grain as a couple. */
final class DowelStiffness {

  private static final Formula ONE_DOWEL =
      Formula.define("k_d")
          .meaning("stiffness of one glued dowel pulled")
          .unit(Unit.N_PER_MM)
          .where("k_s", "shear stiffness of glue and wood per area", Unit.N_PER_MM3)
          .where("d", "dowel diameter", Unit.MM)
          .where("l_r", "length in the rail", Unit.MM)
          .where("l_p", "length in the post", Unit.MM)
          .where("E_d", "modulus of the dowel", Unit.MPA)
          .as("1/(1/(k_s*π*d*l_r) + 1/(k_s*π*d*l_p)" + " + (l_r + l_p)/3/(E_d*π*d^2/4))")
          .source(Source.derived("springs in series: glue in both pieces and the dowel's stretch"));

  private static final Formula COUPLE =
      Formula.define("K_d")
          .meaning("rotational stiffness of what is pulled, against a sprung edge")
          .unit(Unit.N_MM_PER_RAD)
          .where("k_d", "stiffness of one dowel or screw", Unit.N_PER_MM)
          .where("n", "their number", Unit.ONE)
          .where("S_1", "sum of levers", Unit.MM)
          .where("S_2", "sum of squared levers", Unit.MM2)
          .where("k_C", "stiffness of the pressed end", Unit.N_PER_MM)
          .as("k_d*(S_2 - k_d*S_1^2/(k_C + n*k_d))")
          .source(Source.derived("statics: levers against a sprung edge"));

  private DowelStiffness() {}

  static JointStiffness of(DowelledButt joint, JointSetting setting, Pad pad) {
    Joint.Members m = setting.members();
    double e = ShoulderSpring.halfPlane(pad, setting.post(), setting.postFace());
    double d = joint.dowel().diameter();
    ShoulderSpring.Pressed pressed =
        ShoulderSpring.of(pad, m.railDepth(), m.railThickness(), 0, 0, m.railDepth() / 2, e);
    double ks =
        TenonSpring.slip(
            pad,
            setting.glue().slipStiffness(),
            d,
            setting.rail().gLT(),
            m.railThickness() / 2,
            setting.post().gRT());
    double one =
        pad.take(ONE_DOWEL, ks, d, joint.inRail(), joint.inPost(), joint.dowel().wood().modulus());
    double k = couple(pad, heights(joint), pressed, one);
    double dowels = joint.count() * one;
    double density =
        Slip.density(pad, joint.dowel().wood().density(), setting.rail().meanDensity());
    Range push = Range.of(joint.count() * Slip.dowel(pad, density, d), 0.3, 1, 2);
    return new Six(
            Range.of(dowels, 0.2, 0.5, 1),
            push,
            push,
            Range.of(k, 0.2, 0.5, 1),
            Six.sidewaysGlued(k),
            Six.sidewaysGlued(k))
        .joint(
            pad,
            "no solid model of dowels was run: glue and stretch of the dowels against the pressed"
                + " edge, with wider factors (0.2, 0.5, 1, judgement)",
            0);
  }

  private static List<Double> heights(DowelledButt joint) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < joint.count(); i++) {
      out.add(joint.edge() + i * joint.spacing());
    }
    return out;
  }

  /** Rotational stiffness of pulled dowels or screws at some heights, against a pressed edge. */
  static double couple(Pad pad, List<Double> heights, ShoulderSpring.Pressed pressed, double one) {
    double sum = 0;
    double squares = 0;
    for (double height : heights) {
      double z = Math.max(0, height - pressed.depth() / 3);
      sum += z;
      squares += z * z;
    }
    pad.given("S_1", "sum of levers", sum, Unit.MM, Source.derived("geometry"));
    pad.given("S_2", "sum of squared levers", squares, Unit.MM2, Source.derived("geometry"));
    return pad.take(COUPLE, one, heights.size(), sum, squares, pressed.bearing());
  }
}
