package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;

/** Lists of three numbers. */
final class Vectors {

  private Vectors() {}

  static Got<Vec3> vector(Value value) {
    return value.numbers(3, Range.ANY).map(Vectors::of);
  }

  static Field<Vec3> vector(Fields fields, String key) {
    return fields.either(key, "a list of 3 numbers", Vectors::vector);
  }

  static Got<Vec3> orZero(Fields fields, String key) {
    return vector(fields, key).optional().map(given -> given.orElse(Vec3.ZERO));
  }

  private static Vec3 of(List<Double> numbers) {
    return new Vec3(numbers.get(0), numbers.get(1), numbers.get(2));
  }
}
