package org.stoutwork.report.file.frame;

import java.util.EnumMap;
import java.util.Map;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;
import org.stoutwork.report.file.tree.Nearest;

/** How the ground holds nodes. */
final class SupportMapping {

  private SupportMapping() {}

  static Got<Map<Direction, Restraint>> node(String node, Value value, Names names) {
    return names.isNode(node) ? value.map(SupportMapping::directions) : noNode(node, value, names);
  }

  static <T> Got<T> noNode(String node, Value value, Names names) {
    return value.note(
        "names no node",
        "the name of a node is needed as key",
        Nearest.question(Nearest.to(node, names.nodes())));
  }

  private static Got<Map<Direction, Restraint>> directions(Fields fields) {
    Map<Direction, Got<Restraint>> held = new EnumMap<>(Direction.class);
    for (Direction direction : Direction.values()) {
      String key = Words.of(direction);
      boolean given = fields.has(key);
      Got<Restraint> restraint =
          fields
              .either(key, noun(direction), value -> restraint(value, direction))
              .optional()
              .map(found -> found.orElse(Restraint.FIXED));
      if (given) {
        held.put(direction, restraint);
      }
    }
    return fields.build(
        () -> {
          Map<Direction, Restraint> built = new EnumMap<>(Direction.class);
          held.forEach((direction, got) -> built.put(direction, got.get()));
          return built;
        });
  }

  private static Got<Restraint> restraint(Value value, Direction direction) {
    if (value.isMap()) {
      return value.map(fields -> special(fields, direction));
    }
    if (value.isNumber()) {
      return value.as(Kinds.number(Range.POSITIVE)).map(Restraint::elastic);
    }
    Map<String, Restraint> words =
        direction == Direction.UZ
            ? Words.inOrder(
                "fixed", Restraint.FIXED, Words.COMPRESSION_ONLY, Restraint.COMPRESSION_ONLY)
            : Map.of("fixed", Restraint.FIXED);
    return value.as(Kinds.choice(words).named(noun(direction)));
  }

  private static Got<Restraint> special(Fields fields, Direction direction) {
    Got<Restraint> prescribed =
        fields
            .number("prescribed", Range.ANY)
            .optional()
            .map(given -> given.map(Restraint::prescribed).orElse(Restraint.FIXED));
    if (direction != Direction.UZ) {
      return fields.has("prescribed")
          ? prescribed
          : fields.fault("has no key `prescribed`", noun(direction) + " is needed", "");
    }
    Got<Restraint> oneWay =
        fields
            .number(Words.COMPRESSION_ONLY, Range.POSITIVE)
            .optional()
            .map(given -> given.map(Restraint::compressionOnly).orElse(Restraint.FIXED));
    if (fields.has("prescribed") == fields.has(Words.COMPRESSION_ONLY)) {
      return fields.fault(
          "does not hold one of `prescribed` and `compression-only`",
          noun(direction) + " is needed",
          "");
    }
    return fields.has("prescribed") ? prescribed : oneWay;
  }

  private static String noun(Direction direction) {
    return direction == Direction.UZ
        ? "fixed, compression-only, a stiffness above 0, {prescribed: value} or"
            + " {compression-only: stiffness}"
        : "fixed, a stiffness above 0 or {prescribed: value}";
  }
}
