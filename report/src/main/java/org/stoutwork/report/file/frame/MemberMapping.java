package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;
import org.stoutwork.report.file.tree.ShortNumber;

/** Members with their ends. */
final class MemberMapping {

  private static final double SHORTEST = 1e-6;

  private final Names names;
  private final Map<String, Vec3> places;
  private final Map<String, Double> lengths = new LinkedHashMap<>();

  MemberMapping(Names names, Map<String, Vec3> places) {
    this.names = names;
    this.places = places;
  }

  /** Flexible length by member, mm, of the members read so far. */
  Map<String, Double> lengths() {
    return lengths;
  }

  Got<Member> member(String name, Fields fields) {
    Got<String> from = fields.scalar("from", names.node()).required();
    Got<String> to = fields.scalar("to", names.node()).required();
    Got<String> section = fields.scalar("section", names.section()).required();
    Got<String> material = fields.scalar("material", names.material()).required();
    Got<Double> roll =
        fields.number("roll_deg", Range.ANY).optional().map(given -> given.orElse(0.0));
    Got<List<EndCondition>> start = end(fields, "start");
    Got<List<EndCondition>> end = end(fields, "end");
    Got<Vec3> startOffset = Vectors.orZero(fields, "start_offset");
    Got<Vec3> endOffset = Vectors.orZero(fields, "end_offset");
    measure(name, fields, from, to, startOffset, endOffset);
    return fields.build(
        () ->
            new Member(
                name,
                from.get(),
                to.get(),
                section.get(),
                material.get(),
                Math.toRadians(roll.get()),
                new MemberEnd(start.get(), startOffset.get()),
                new MemberEnd(end.get(), endOffset.get())));
  }

  private void measure(
      String name,
      Fields fields,
      Got<String> from,
      Got<String> to,
      Got<Vec3> startOffset,
      Got<Vec3> endOffset) {
    Vec3 start = places.get(from.orElse(""));
    Vec3 end = places.get(to.orElse(""));
    if (start == null || end == null || !startOffset.isThere() || !endOffset.isThere()) {
      return;
    }
    double length = end.plus(endOffset.get()).minus(start.plus(startOffset.get())).length();
    if (length > SHORTEST) {
      lengths.put(name, length);
    } else {
      fields.fault(
          "is " + ShortNumber.of(length) + " mm long",
          "a member needs length: move its nodes apart or shorten its offsets",
          "");
    }
  }

  private static Got<List<EndCondition>> end(Fields fields, String key) {
    return fields
        .map(key, MemberMapping::conditions)
        .optional()
        .map(given -> given.orElse(MemberEnd.RIGID.conditions()));
  }

  private static Got<List<EndCondition>> conditions(Fields fields) {
    List<Got<EndCondition>> conditions = new ArrayList<>();
    for (Direction direction : Direction.values()) {
      conditions.add(
          fields
              .either(Words.of(direction), "rigid, free or a stiffness", MemberMapping::condition)
              .optional()
              .map(given -> given.orElse(EndCondition.RIGID)));
    }
    return fields.build(() -> conditions.stream().map(Got::get).toList());
  }

  private static Got<EndCondition> condition(Value value) {
    return value.isNumber()
        ? value.as(Kinds.number(Range.NOT_NEGATIVE)).map(EndCondition::elastic)
        : value.as(
            Kinds.choice(Words.inOrder("rigid", EndCondition.RIGID, "free", EndCondition.FREE))
                .named("rigid, free or a stiffness"));
  }
}
