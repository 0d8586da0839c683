package org.stoutwork.check;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.stoutwork.assembly.Bases;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Timber;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.DesignTables;
import org.stoutwork.wood.design.DesignValues;
import org.stoutwork.wood.design.Found;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.working.Pad;

/** Design values of the woods of a bench; those once found are kept. Not thread-safe. */
public final class Strengths {

  private record Asked(String wood, DurationClass duration, DesignQuantity what) {}

  private final Bench bench;
  private final DesignTables tables;
  private final Map<Asked, OptionalDouble> found = new HashMap<>();

  Strengths(Bench bench, DesignTables tables) {
    this.bench = bench;
    this.tables = tables;
  }

  /** The tables behind. */
  public DesignTables tables() {
    return tables;
  }

  /** The wood whose values count. */
  public Wood counted(String wood) {
    return Timbers.counted(bench.timbers().get(wood));
  }

  /** All design values of a wood under an action of some duration. */
  public DesignValues of(String wood, DurationClass duration) {
    Timber timber = bench.timbers().get(wood);
    return DesignValues.of(
        counted(wood),
        Bases.of(bench.basis()),
        Timbers.conditions(bench, timber, LoadDuration.of(duration)),
        tables);
  }

  /** One value without its working; empty if the basis lacks it. */
  public OptionalDouble value(String wood, DurationClass duration, DesignQuantity what) {
    return found.computeIfAbsent(
        new Asked(wood, duration, what),
        asked -> of(wood, duration).find(what, Pad.blank()).value());
  }

  /** One value, written down line by line. */
  public Found explain(String wood, DurationClass duration, DesignQuantity what, Pad pad) {
    return of(wood, duration).find(what, pad);
  }

  /** Characteristic compression strength along the grain, for the slenderness of a column, MPa. */
  public OptionalDouble characteristicCompression(String wood) {
    return counted(wood) instanceof StrengthClass timber
        ? OptionalDouble.of(timber.value(ClassProperty.COMPRESSION_PARALLEL).value())
        : OptionalDouble.empty();
  }

  /**
   * Characteristic bending strength, for the slenderness of a beam that may buckle laterally, MPa.
   */
  public OptionalDouble characteristicBending(String wood) {
    return counted(wood) instanceof StrengthClass timber
        ? OptionalDouble.of(timber.value(ClassProperty.BENDING).value())
        : OptionalDouble.empty();
  }

  /** Whether a wood is solid timber of a softwood class. */
  public boolean isSolidSoftwood(String wood) {
    return counted(wood) instanceof StrengthClass timber && timber.group() == WoodGroup.SOFTWOOD;
  }

  /** Part of the width that carries shear, together with the shear strength. */
  public double crackFactor(String wood) {
    return of(wood, DurationClass.PERMANENT).crackFactor().value();
  }

  /** Creep factor k_def of a wood where the bench stands. */
  public double kDef(String wood) {
    Wood counted = counted(wood);
    String grade = counted instanceof SheetGood sheet ? sheet.grade() : "";
    return tables
        .time()
        .kDef(counted.product(), grade, bench.air().climate().serviceClass())
        .or(
            () ->
                tables.time().kDef(Product.SOLID_TIMBER, "", bench.air().climate().serviceClass()))
        .orElseThrow()
        .value();
  }
}
