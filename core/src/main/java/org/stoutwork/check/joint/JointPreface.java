package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;
import org.stoutwork.working.Working;

/**
 * Says, before the working of a joint, where its forces and strengths come from: only those that
 * the working uses.
 */
record JointPreface(Inquiry inquiry, String rail, String post, DurationClass duration) {

  private static final Source ANALYSIS =
      Source.derived("analysis of the frame, joints at mean stiffness");

  private static final List<DesignQuantity> STRENGTHS =
      List.of(
          DesignQuantity.BENDING,
          DesignQuantity.TENSION_PARALLEL,
          DesignQuantity.COMPRESSION_PARALLEL,
          DesignQuantity.COMPRESSION_PERPENDICULAR,
          DesignQuantity.SHEAR);

  /** The working with what it starts from before it. */
  Working before(Working working, JointForces forces) {
    List<Double> used = used(working);
    RecordingPad pad = Pad.recording();
    force("N", "pull along the rail; a push is negative", forces.axial(), Unit.N, used, pad);
    force("V", "shear in the plane of the frame", forces.shear(), Unit.N, used, pad);
    force("V_y", "shear across the frame", forces.shearAcross(), Unit.N, used, pad);
    force("M", "moment in the plane of the frame", forces.moment(), Unit.N_MM, used, pad);
    force("M_z", "moment of the rail in plan", forces.momentVertical(), Unit.N_MM, used, pad);
    force("T", "twist about the rail", forces.torsion(), Unit.N_MM, used, pad);
    for (Map.Entry<String, String> wood : woods().entrySet()) {
      for (DesignQuantity what : STRENGTHS) {
        strength(wood.getKey(), wood.getValue(), what, used, pad);
      }
    }
    pad.include(working);
    return pad.working();
  }

  /** Woods of the joint with the pieces that are of it. */
  private Map<String, String> woods() {
    Map<String, String> out = new LinkedHashMap<>();
    if (rail.equals(post)) {
      out.put(rail, "of " + inquiry.nameOf(rail));
    } else {
      out.put(rail, "of the rail, " + inquiry.nameOf(rail));
      out.put(post, "of the post, " + inquiry.nameOf(post));
    }
    return out;
  }

  private static List<Double> used(Working working) {
    List<Double> out = new ArrayList<>();
    for (Line line : working.lines()) {
      if (line instanceof Line.Calculated calculated) {
        calculated.values().forEach(v -> out.add(Math.abs(v)));
      } else if (line instanceof Line.Given given) {
        out.add(Math.abs(given.value()));
      }
    }
    return out;
  }

  private static void force(
      String symbol, String meaning, double value, Unit unit, List<Double> used, Pad pad) {
    if (value != 0 && used.contains(Math.abs(value))) {
      pad.given(symbol, meaning, value, unit, ANALYSIS);
    }
  }

  private void strength(
      String wood, String whose, DesignQuantity what, List<Double> used, Pad pad) {
    OptionalDouble value = inquiry.strengths().value(wood, duration, what);
    if (value.isPresent() && used.contains(value.getAsDouble())) {
      pad.given(
          what.symbol(),
          what.meaning() + ", " + whose,
          value.getAsDouble(),
          what.unit(),
          Source.derived("design values of this wood, duration: " + duration.words()));
    }
  }
}
