package org.stoutwork.report.sheet.bench;

import java.util.List;
import org.stoutwork.bench.Bench;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.figure.PartList;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.source.Source;

/** What all sections of one sheet draw upon. For one thread, and used once. */
final class Matter {

  private final BenchResult result;
  private final SheetOptions options;
  private final PageSetup setup;
  private final TextMeasure measure;
  private final Amounts amounts;
  private final PartList parts;
  private final String fingerprint;
  private final Register<String> loads = new Register<>("L");
  private final Register<String> combinations = new Register<>("K");
  private final Register<Source> sources = new Register<>("S");

  Matter(BenchResult result, SheetOptions options, TextMeasure measure) {
    this.result = result;
    this.options = options;
    this.setup = PageSetup.usual(options.paper());
    this.measure = measure;
    this.amounts = new Amounts(options.units());
    this.parts = PartList.of(result.bench());
    this.fingerprint = Fingerprint.of(result.bench());
  }

  BenchResult result() {
    return result;
  }

  Bench bench() {
    return result.bench();
  }

  SheetOptions options() {
    return options;
  }

  PageSetup setup() {
    return setup;
  }

  TextMeasure measure() {
    return measure;
  }

  Amounts amounts() {
    return amounts;
  }

  PartList parts() {
    return parts;
  }

  String fingerprint() {
    return fingerprint;
  }

  boolean si() {
    return options.units() == UnitSystem.SI;
  }

  /** Short names of loads where they stand. */
  Register<String> loads() {
    return loads;
  }

  /** Short names of combinations. */
  Register<String> combinations() {
    return combinations;
  }

  /** Short names of sources. */
  Register<Source> sources() {
    return sources;
  }

  /** A text from the checks: in the reader's units, its signs as they are. */
  String say(String text) {
    return Shown.plain(amounts.inWords(text));
  }

  /** The checks in the order of the sheet. */
  List<CheckResult> checks() {
    return result.checks();
  }
}
