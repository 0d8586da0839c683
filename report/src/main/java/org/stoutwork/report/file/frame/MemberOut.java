package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Locale;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.solve.MemberResult.Force;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes the results of one member. */
final class MemberOut {

  private static final List<Integer> QUARTERS = List.of(0, 1, 2, 3, 4);

  private MemberOut() {}

  static void write(JsonOut out, MemberStatics member) {
    out.numbers("start", member.start()).numbers("end", member.end());
    out.objects(
        "internal",
        QUARTERS,
        (o, quarter) ->
            o.put("x", member.length() * quarter / 4).numbers("forces", member.internal(quarter)));
    out.object("extremes", o -> extremes(o, member.extremes()));
  }

  /** Largest in size, with sign and place; V and M are the larger of their two components. */
  private static void extremes(JsonOut out, MemberExtremes extremes) {
    extreme(out, "N", extremes.forces().get(Force.N));
    component(out, "V", extremes.shear());
    extreme(out, "T", extremes.forces().get(Force.T));
    component(out, "M", extremes.moment());
    for (Force force : List.of(Force.VY, Force.VZ, Force.MY, Force.MZ)) {
      extreme(out, name(force), extremes.forces().get(force));
    }
    extremes.deflection().ifPresent(larger -> component(out, "deflection", larger));
    extremes.sag().ifPresent(larger -> component(out, "sag", larger));
  }

  private static String name(Force force) {
    return force.name().charAt(0) + force.name().substring(1).toLowerCase(Locale.ROOT);
  }

  private static void extreme(JsonOut out, String key, Extreme extreme) {
    out.object(key, o -> o.put("value", extreme.value()).put("x", extreme.at()));
  }

  private static void component(JsonOut out, String key, MemberExtremes.Component larger) {
    out.object(
        key,
        o ->
            o.put("value", larger.extreme().value())
                .put("x", larger.extreme().at())
                .put("axis", larger.axis()));
  }
}
