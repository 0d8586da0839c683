package org.stoutwork.report.file.bench;

import org.stoutwork.quantity.Density;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Stress;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Quantities;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.wood.Species;

/**
 * The values that a maker may state of a wood: means of clear, air-dry specimens, and shrinkage
 * from green to ovendry. The ranges are wide enough for every wood there is and narrow enough to
 * notice a slipped unit.
 */
enum OwnValue {
  SPECIFIC_GRAVITY("specificGravity", ratio(0.1, 1.4), mean(ClearProperty.SPECIFIC_GRAVITY)),
  /** Of air-dry wood, water included, as data sheets print it. */
  DENSITY("density", density(100, 1500), OwnValue::withDensity),
  BENDING("bending", stress(10, 300), mean(ClearProperty.BENDING)),
  MODULUS("modulus", stress(1000, 40_000), mean(ClearProperty.MODULUS)),
  COMPRESSION_ALONG("compressionAlong", stress(5, 200), mean(ClearProperty.COMPRESSION_PARALLEL)),
  COMPRESSION_ACROSS(
      "compressionAcross", stress(0.5, 60), mean(ClearProperty.COMPRESSION_PERPENDICULAR)),
  SHEAR("shear", stress(1, 50), mean(ClearProperty.SHEAR)),
  TENSION_ACROSS("tensionAcross", stress(0.3, 30), mean(ClearProperty.TENSION_PERPENDICULAR)),
  HARDNESS("hardness", force(200, 30_000), mean(ClearProperty.HARDNESS)),
  SHRINKAGE_RADIAL("shrinkageRadial", shrinkage(), shrinking(Shrinkage::withRadial)),
  SHRINKAGE_TANGENTIAL("shrinkageTangential", shrinkage(), shrinking(Shrinkage::withTangential));

  /** How a value changes a species. */
  private interface Giving {
    Species give(Species species, double number, String source);
  }

  /** How a value changes the shrinkage of a species. */
  private interface Shrinking {
    Shrinkage with(Shrinkage before, Property yours);
  }

  private static final double WATER = 1000;

  private final String key;
  private final Kind<Double> kind;
  private final Giving giving;

  OwnValue(String key, Kind<Double> kind, Giving giving) {
    this.key = key;
    this.kind = kind;
    this.giving = giving;
  }

  private static Giving mean(ClearProperty what) {
    return (species, number, source) ->
        species.withDry(what, Property.yours(number, what.unit(), source));
  }

  private static Giving shrinking(Shrinking how) {
    return (species, number, source) ->
        species.withShrinkage(
            how.with(species.shrinkage(), Property.yours(number, Unit.PERCENT, source)));
  }

  private static Species withDensity(Species species, double kgPerM3, String source) {
    double gravity = kgPerM3 / WATER / (1 + species.clear().dryMoisture() / 100);
    return mean(ClearProperty.SPECIFIC_GRAVITY).give(species, gravity, source);
  }

  private static Kind<Double> ratio(double least, double most) {
    return Kinds.number(Range.between(least, most));
  }

  private static Kind<Double> shrinkage() {
    return Quantities.percent("a shrinkage from green to ovendry", 0.5, 20);
  }

  private static Kind<Double> density(double least, double most) {
    Kind<Density> kind =
        Quantities.density().between(Density.ofKgPerM3(least), Density.ofKgPerM3(most)).kind();
    return Kind.of(kind.noun(), text -> kind.parser().parse(text).kgPerM3(), String::valueOf);
  }

  private static Kind<Double> stress(double least, double most) {
    Kind<Stress> kind = Quantities.stress().between(Stress.ofMpa(least), Stress.ofMpa(most)).kind();
    return Kind.of(kind.noun(), text -> kind.parser().parse(text).mpa(), String::valueOf);
  }

  private static Kind<Double> force(double least, double most) {
    Kind<Force> kind =
        Quantities.force().between(Force.ofNewtons(least), Force.ofNewtons(most)).kind();
    return Kind.of(kind.noun(), text -> kind.parser().parse(text).newtons(), String::valueOf);
  }

  /** The key in the file. */
  String key() {
    return key;
  }

  /** The field of a map; its value is in the unit that {@link #give} takes. */
  Field<Double> field(Fields fields) {
    return fields.scalar(key, kind);
  }

  /** The species with this value, marked as the maker's. */
  Species give(Species species, double number, String source) {
    return giving.give(species, number, source);
  }
}
