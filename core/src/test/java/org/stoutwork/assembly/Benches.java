package org.stoutwork.assembly;

import org.stoutwork.bench.Bench;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignTables;

/** Benches and tables that several tests share. */
public final class Benches {

  public static final WoodCatalogue WOODS = WoodCatalogue.load();
  public static final DesignTables TABLES = DesignTables.load();

  private Benches() {}

  /** An ordinary bench with unequal numbers everywhere. */
  public static BenchSketch ordinary() {
    return BenchSketch.named("ordinary bench")
        .height(mm(845))
        .wood("beech-european")
        .top(t -> t.length(mm(1730)).width(mm(640)).thickness(mm(62)))
        .everyEndFrame(
            f ->
                f.legs(l -> l.along(mm(92)).across(mm(76)).frontInset(mm(18)).backInset(mm(33)))
                    .topRail(r -> r.depth(mm(104)).thickness(mm(44)))
                    .bottomRail(r -> r.depth(mm(88)).thickness(mm(41)).bottomEdgeAt(mm(110))))
        .endFrame(f -> f.at(mm(270)))
        .endFrame(f -> f.at(mm(1490)));
  }

  public static Length mm(double value) {
    return Length.ofMm(value);
  }

  public static Bench complete(BenchSketch sketch) {
    try {
      return sketch.complete(WOODS);
    } catch (UnsoundBench e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
