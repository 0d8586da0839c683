package org.stoutwork.assembly;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Timber;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.design.DesignConditions;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.DesignTables;
import org.stoutwork.wood.design.DesignValues;
import org.stoutwork.wood.direction.Orthotropic;
import org.stoutwork.wood.direction.PlateModuli;
import org.stoutwork.wood.direction.SheetStiffness;
import org.stoutwork.wood.direction.WoodStiffness;
import org.stoutwork.wood.moisture.RingDirection;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;
import org.stoutwork.working.Pad;

/** The mean stiffness and density of every wood of a bench, as the frame needs them. */
public final class Timbers {

  private static final double USUAL_SHEET_DENSITY = 650;

  private final Map<String, FrameTimber> byKey = new LinkedHashMap<>();

  private Timbers() {}

  /**
   * The woods of a bench at the middle of their moisture range.
   *
   * @throws IllegalStateException if the tables lack the modulus or the density of a wood
   */
  public static Timbers of(Bench bench, DesignTables tables) {
    Timbers all = new Timbers();
    bench
        .timbers()
        .forEach((key, timber) -> all.byKey.put(key, frameTimber(bench, timber, tables)));
    return all;
  }

  /** The values of one wood. */
  public FrameTimber get(String key) {
    return byKey.get(key);
  }

  /** The wood whose values count: the class it was graded as, or itself. */
  public static Wood counted(Timber timber) {
    return timber.gradedAs().isPresent() ? timber.gradedAs().get() : timber.wood();
  }

  /** What a wood of the bench must serve under. */
  public static DesignConditions conditions(Bench bench, Timber timber, LoadDuration duration) {
    return new DesignConditions(
        duration,
        bench.air().climate().serviceClass(),
        bench.air().range().middle(),
        DesignConditions.Situation.USUAL,
        timber.growth());
  }

  private static FrameTimber frameTimber(Bench bench, Timber timber, DesignTables tables) {
    Wood wood = counted(timber);
    if (wood instanceof SheetGood sheet) {
      return ofSheet(sheet);
    }
    DesignConditions conditions =
        conditions(bench, timber, LoadDuration.of(DurationClass.PERMANENT));
    DesignValues values = DesignValues.of(wood, Bases.of(bench.basis()), conditions, tables);
    double e = values.find(DesignQuantity.MODULUS_MEAN, Pad.blank()).orElseThrow();
    double density = values.find(DesignQuantity.DENSITY_MEAN, Pad.blank()).orElseThrow();
    Orthotropic directions = directions(timber, bench.air().range().middle(), tables);
    TimberStiffness stiffness = scaled(directions, e, density);
    return new FrameTimber(
        e,
        (stiffness.eR() + stiffness.eT()) / 2,
        (stiffness.gLR() + stiffness.gLT()) / 2,
        stiffness.gRT(),
        density,
        scaled(WoodStiffness.plate(directions, RingDirection.UNKNOWN), e),
        Optional.of(stiffness));
  }

  /** Ratios between directions come from the species where it is known. */
  private static Orthotropic directions(Timber timber, double moisture, DesignTables tables) {
    if (timber.wood() instanceof Species species) {
      return tables.stiffness().of(species, moisture, Pad.blank()).orElseThrow();
    }
    return WoodStiffness.of((StrengthClass) timber.wood());
  }

  private static TimberStiffness scaled(Orthotropic w, double e, double density) {
    double f = e / w.eL();
    return new TimberStiffness(
        e,
        f * w.eR(),
        f * w.eT(),
        f * w.gLr(),
        f * w.gLt(),
        f * w.gRt(),
        w.nuLr(),
        w.nuLt(),
        density);
  }

  private static PlateModuli scaled(PlateModuli p, double e) {
    double f = e / p.e1();
    return new PlateModuli(
        e, f * p.e2(), f * p.g12(), f * p.g13(), f * p.g23(), p.nu12(), p.source());
  }

  private static FrameTimber ofSheet(SheetGood sheet) {
    PlateModuli m =
        SheetStiffness.of(sheet)
            .orElseThrow(() -> new IllegalStateException("no modulus is known of " + sheet.key()));
    double density =
        sheet
            .value(org.stoutwork.wood.SheetProperty.DENSITY_MEAN)
            .map(p -> p.value())
            .orElse(USUAL_SHEET_DENSITY);
    return new FrameTimber(m.e1(), m.e2(), m.g12(), m.g23(), density, m, Optional.empty());
  }
}
