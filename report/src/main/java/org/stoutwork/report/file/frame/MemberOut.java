package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.MemberResult.Force;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes the results of one member. */
final class MemberOut {

  private static final int QUARTERS = 4;

  private MemberOut() {}

  static void write(JsonOut out, MemberResult member) {
    out.numbers("start", member.start()).numbers("end", member.end());
    List<Double> places =
        IntStream.rangeClosed(0, QUARTERS)
            .mapToObj(quarter -> member.length() * quarter / QUARTERS)
            .toList();
    out.objects(
        "internal", places, (o, x) -> o.put("x", x).numbers("forces", member.internalAt(x)));
    out.object("extremes", o -> extremes(o, member));
  }

  /**
   * The values that are largest in size, with their signs and places. {@code V} and {@code M} are
   * the larger of their two components; {@code deflection} is the displacement of the axis, node
   * displacements included, {@code sag} the distance from the line between the displaced ends.
   */
  private static void extremes(JsonOut out, MemberResult member) {
    MemberExtremes extremes = MemberExtremes.of(member);
    extreme(out, "N", extremes.n());
    componentwise(out, "V", extremes.v());
    extreme(out, "T", extremes.t());
    componentwise(out, "M", extremes.m());
    for (Force force : List.of(Force.VY, Force.VZ, Force.MY, Force.MZ)) {
      extreme(out, name(force), member.along(force).largest());
    }
    componentwise(out, "deflection", extremes.deflection());
    componentwise(out, "sag", extremes.sag());
  }

  private static String name(Force force) {
    return force.name().charAt(0) + force.name().substring(1).toLowerCase(Locale.ROOT);
  }

  private static void extreme(JsonOut out, String key, Extreme extreme) {
    out.object(key, o -> o.put("value", extreme.value()).put("x", extreme.at()));
  }

  private static void componentwise(JsonOut out, String key, MemberExtremes.Component larger) {
    out.object(
        key,
        o ->
            o.put("value", larger.extreme().value())
                .put("x", larger.extreme().at())
                .put("axis", larger.axis()));
  }
}
