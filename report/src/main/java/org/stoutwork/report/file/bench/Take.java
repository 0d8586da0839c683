package org.stoutwork.report.file.bench;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;

/**
 * Hands what stands in the file on to a sketch. What is absent, or was refused with its mistake
 * noted, leaves a gap in the sketch.
 */
final class Take {

  /** Text that may be a number or a date without quotes. */
  static final Kind<String> MARK = Kind.of("text", text -> text, text -> text);

  /** What a list must be that cannot be empty. */
  static final String SOME = "a list of at least one entry";

  private Take() {}

  /** Hands on one value. */
  static <T> void value(Field<T> field, Consumer<? super T> use) {
    field.optional().ifThere(given -> given.ifPresent(use));
  }

  /** Hands on one map of keys. */
  static void part(Fields fields, String key, Consumer<Fields> use) {
    fields.map(key, inner -> used(inner, use)).optional();
  }

  /** Hands on each map of a list, with its place in the file. */
  static void parts(Fields fields, String key, BiConsumer<String, Fields> use) {
    list(fields, key, use).optional();
  }

  /** The same, where an empty list would not mean none of them: the usual ones would be taken. */
  static void someParts(Fields fields, String key, BiConsumer<String, Fields> use) {
    list(fields, key, use).where(all -> !all.isEmpty(), SOME).optional();
  }

  private static Field<List<Boolean>> list(
      Fields fields, String key, BiConsumer<String, Fields> use) {
    return fields.list(
        key, item -> item.map(inner -> used(inner, each -> use.accept(item.path().text(), each))));
  }

  /** What a mapping gives that hands its map on. */
  static Got<Boolean> used(Fields inner, Consumer<Fields> use) {
    use.accept(inner);
    return Got.of(true);
  }
}
