package org.stoutwork.report.file.result;

import java.util.Locale;
import org.stoutwork.report.file.tree.JsonOut;
import org.stoutwork.result.CheckResult;

/** One check. */
final class CheckOut {

  private CheckOut() {}

  static void checked(JsonOut out, CheckResult.Checked check) {
    head(out, check);
    out.put("place", check.place());
    out.put("demand", check.demand().value());
    out.put("capacity", check.capacity().value());
    out.put("sense", check.wording().verb());
    out.put("of", check.wording().of());
    out.put("unit", check.demand().unit().symbol());
    Plain.number(out, "utilisation", check.utilisation());
    check.range().ifPresent(range -> Plain.range(out, "range", range));
    out.put("verdict", check.verdict().words());
    out.put("load", check.load());
    out.put("combination", check.combination());
    out.put("note", check.note());
    out.objects("working", check.working().lines(), WorkingOut::line);
  }

  static void notChecked(JsonOut out, CheckResult.NotChecked check) {
    head(out, check);
    out.put("reason", check.reason());
  }

  private static void head(JsonOut out, CheckResult check) {
    out.put("key", check.key()).put("title", check.title()).put("part", check.part());
    out.put("topic", check.topic().name().toLowerCase(Locale.ROOT));
  }
}
