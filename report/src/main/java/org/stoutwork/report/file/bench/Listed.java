package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.report.file.field.FileReading.Outcome;

/** Lists the defaults of the file before those of the completion. */
final class Listed {

  private Listed() {}

  static BenchFile of(Outcome<BenchFile> outcome) {
    List<DefaultTaken> all = new ArrayList<>();
    outcome.defaults().forEach(d -> all.add(new DefaultTaken(d.keyPath(), d.value(), d.why())));
    BenchFile file = outcome.value();
    all.addAll(file.bench().defaults());
    return new BenchFile(file.bench().withDefaults(all.stream().distinct().toList()), file.woods());
  }
}
