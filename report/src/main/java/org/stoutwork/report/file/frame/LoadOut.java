package org.stoutwork.report.file.frame;

import java.util.Locale;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes loads on nodes and members. */
final class LoadOut {

  private LoadOut() {}

  static void load(JsonOut out, Load load) {
    if (load instanceof Load.OnNode node) {
      out.put("type", "node").put("node", node.node());
      forces(out, node.force(), node.moment());
    } else if (load instanceof Load.OnMemberPoint point) {
      out.put("type", "member-point").put("member", point.member()).put("at", point.at());
      forces(out, point.force(), point.moment());
      axes(out, point.axes());
    } else if (load instanceof Load.OnMemberLine line) {
      line(out, line);
    } else if (load instanceof Load.SelfWeight weight) {
      out.put("type", "self-weight").numbers("direction", weight.direction().toArray());
    }
  }

  private static void line(JsonOut out, Load.OnMemberLine line) {
    out.put("type", "member-line").put("member", line.member());
    if (line.from() != 0) {
      out.put("from", line.from());
    }
    if (Double.isFinite(line.to())) {
      out.put("to", line.to());
    }
    out.numbers("start", line.start().toArray()).numbers("end", line.end().toArray());
    axes(out, line.axes());
  }

  private static void forces(JsonOut out, Vec3 force, Vec3 moment) {
    out.numbers("force", force.toArray());
    if (!moment.equals(Vec3.ZERO)) {
      out.numbers("moment", moment.toArray());
    }
  }

  private static void axes(JsonOut out, Load.Axes axes) {
    if (axes != Load.Axes.GLOBAL) {
      out.put("axes", axes.name().toLowerCase(Locale.ROOT));
    }
  }
}
