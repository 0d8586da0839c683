package org.stoutwork.report.file.bench;

import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Stress;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Quantities;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.wood.ClearProperty;

/**
 * The values that a maker may state of a wood, as means of clear, air-dry specimens. The ranges are
 * wide enough for every wood there is and narrow enough to notice a slipped unit.
 */
enum OwnValue {
  SPECIFIC_GRAVITY("specificGravity", ClearProperty.SPECIFIC_GRAVITY, ratio(0.1, 1.4)),
  BENDING("bending", ClearProperty.BENDING, stress(10, 300)),
  MODULUS("modulus", ClearProperty.MODULUS, stress(1000, 40_000)),
  COMPRESSION_ALONG("compressionAlong", ClearProperty.COMPRESSION_PARALLEL, stress(5, 200)),
  COMPRESSION_ACROSS("compressionAcross", ClearProperty.COMPRESSION_PERPENDICULAR, stress(0.5, 60)),
  SHEAR("shear", ClearProperty.SHEAR, stress(1, 50)),
  TENSION_ACROSS("tensionAcross", ClearProperty.TENSION_PERPENDICULAR, stress(0.3, 30)),
  HARDNESS("hardness", ClearProperty.HARDNESS, force(200, 30_000));

  private final String key;
  private final ClearProperty property;
  private final Kind<Double> kind;

  OwnValue(String key, ClearProperty property, Kind<Double> kind) {
    this.key = key;
    this.property = property;
    this.kind = kind;
  }

  private static Kind<Double> ratio(double least, double most) {
    return Kinds.number(Range.between(least, most));
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

  /** The property it is. */
  ClearProperty property() {
    return property;
  }

  /** The field of a map; its value is in the property's unit. */
  Field<Double> field(Fields fields) {
    return fields.scalar(key, kind);
  }
}
