package org.stoutwork.report.file.result;

import org.stoutwork.quantity.Measure;
import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.result.ActionLine;
import org.stoutwork.result.AdviceLine;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.JointLine;
import org.stoutwork.result.MaterialLine;

/** What went into the checks: masses, woods, joints, actions, defaults. */
final class InputsOut {

  private InputsOut() {}

  static void all(JsonOut out, BenchResult result) {
    out.objects(
        "masses",
        result.masses().entrySet(),
        (o, part) -> o.put("part", part.getKey()).put("mass", part.getValue()));
    out.objects("materials", result.materials(), InputsOut::material);
    out.objects("joints", result.joints(), InputsOut::joint);
    out.objects("advice", result.advice(), InputsOut::advice);
    out.objects("actions", result.actions(), InputsOut::action);
    out.texts("combinations", result.combinations());
    out.objects(
        "defaults",
        result.bench().defaults(),
        (o, taken) ->
            o.put("key", taken.key()).put("value", taken.value()).put("reason", taken.reason()));
  }

  private static void material(JsonOut out, MaterialLine material) {
    out.put("key", material.key()).put("name", material.name());
    out.put("usedFor", material.usedFor());
    out.objects(
        "values",
        material.values(),
        (o, value) -> {
          o.put("symbol", value.symbol()).put("meaning", value.meaning());
          measure(o, value.measure());
          WorkingOut.source(o, value.source());
        });
  }

  private static void joint(JsonOut out, JointLine joint) {
    out.put("name", joint.name()).put("kind", joint.kind()).put("sizes", joint.sizes());
    Plain.range(out, "stiffness", joint.stiffness());
    out.put("reason", joint.reason());
  }

  private static void advice(JsonOut out, AdviceLine line) {
    out.put("joint", line.joint()).put("part", line.part()).put("advice", line.words());
    measure(out, line.value());
    out.put("of", line.of());
    out.put("followed", line.followed());
    line.ratio().ifPresent(ratio -> out.put("effect", line.effect()).put("ratio", ratio));
    WorkingOut.source(out, line.source());
  }

  private static void action(JsonOut out, ActionLine action) {
    out.put("name", action.name());
    measure(out, action.size());
    out.put("direction", action.direction()).put("duration", action.duration());
    WorkingOut.source(out, action.source());
  }

  private static void measure(JsonOut out, Measure measure) {
    out.put("value", measure.value()).put("unit", measure.unit().symbol());
  }
}
