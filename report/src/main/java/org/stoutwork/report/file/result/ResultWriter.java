package org.stoutwork.report.file.result;

import java.util.Locale;
import org.stoutwork.bench.Bench;
import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Racking;
import org.stoutwork.result.SelfCheck;
import org.stoutwork.result.Verdict;

/** Writes the results of a bench as canonical JSON: the same result gives the same bytes. */
public final class ResultWriter {

  /** The number that results carry as {@code schemaVersion}. */
  public static final int SCHEMA_VERSION = 1;

  private ResultWriter() {}

  /**
   * Writes results.
   *
   * @param result of checking a bench
   * @return the text, ending in a newline
   */
  public static String json(BenchResult result) {
    return JsonOut.object(
        out -> {
          out.put("schemaVersion", SCHEMA_VERSION);
          out.object("bench", o -> bench(o, result));
          out.put("verdict", result.verdict().words());
          out.object("counts", o -> counts(o, result));
          out.object("governing", o -> governing(o, result.worst()));
          out.objects("checks", result.checked(), CheckOut::checked);
          out.objects("notChecked", result.notChecked(), CheckOut::notChecked);
          out.objects("racking", result.racking(), ResultWriter::racking);
          InputsOut.all(out, result);
          out.objects(
              "cautions",
              result.cautions(),
              (o, c) ->
                  o.put("code", c.code())
                      .put("severity", c.severity().name().toLowerCase(Locale.ROOT))
                      .put("message", c.message()));
          out.object("selfCheck", o -> selfCheck(o, result.selfCheck()));
        });
  }

  private static void bench(JsonOut out, BenchResult result) {
    Bench bench = result.bench();
    out.put("name", bench.name());
    out.put("project", bench.people().project()).put("revision", bench.people().revision());
    out.put("height", bench.height().mm());
    out.put("topLength", bench.top().length().mm());
    out.put("topWidth", bench.top().width().mm());
    out.put("topThickness", bench.top().thicknessMm());
    out.put("duty", bench.duty().words());
    out.put("pupils", bench.pupils());
    out.put("footing", bench.footing().words());
    out.put("basis", bench.basis().words());
    out.put("mass", result.massKg());
  }

  private static void counts(JsonOut out, BenchResult result) {
    out.put("adequate", count(result, Verdict.ADEQUATE));
    out.put("marginal", count(result, Verdict.MARGINAL));
    out.put("inadequate", count(result, Verdict.INADEQUATE));
    out.put("notChecked", count(result, Verdict.NOT_CHECKED));
  }

  private static long count(BenchResult result, Verdict verdict) {
    return result.checks().stream().filter(c -> c.verdict() == verdict).count();
  }

  private static void governing(JsonOut out, CheckResult.Checked worst) {
    out.put("key", worst.key()).put("part", worst.part()).put("load", worst.load());
    Plain.number(out, "utilisation", worst.utilisation());
  }

  private static void racking(JsonOut out, Racking racking) {
    out.put("way", racking.way().name().toLowerCase(Locale.ROOT));
    out.put("force", racking.force());
    Plain.range(out, "stiffness", racking.stiffness());
    Plain.range(out, "sway", racking.sway());
    Plain.range(out, "amplification", racking.amplification());
  }

  private static void selfCheck(JsonOut out, SelfCheck check) {
    out.put("analyses", check.analyses());
    out.put("equilibriumError", check.equilibriumError());
    out.put("residual", check.residual());
    out.put("reciprocityError", check.reciprocityError());
    out.put("holds", check.holds());
  }
}
