package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;

/** One panel. */
final class PanelMapping {

  private static final int FEWEST_ELEMENTS = 2;
  private static final int MOST_ELEMENTS = 200;
  private static final double SQUARE_ENOUGH = 1e-9;

  private PanelMapping() {}

  static Got<PanelEntry> read(Fields fields) {
    Got<Vec3> origin = Vectors.vector(fields, "origin").required();
    Got<Vec3> along = direction(fields, "along");
    Got<Vec3> across = direction(fields, "across");
    Got<Double> length = fields.number("length", Range.POSITIVE).required();
    Got<Double> width = fields.number("width", Range.POSITIVE).required();
    Got<Double> thickness = fields.number("thickness", Range.POSITIVE).required();
    Got<PanelEntry.Constants> constants = constants(fields);
    Got<Optional<PanelEntry.Mesh>> mesh = mesh(fields);
    Got<Boolean> thin = fields.yesNo("thin").optional().map(given -> given.orElse(false));
    double knownLength = length.orElse(Double.POSITIVE_INFINITY);
    double knownWidth = width.orElse(Double.POSITIVE_INFINITY);
    Got<List<PanelSupport>> supports =
        FrameMapping.orEmpty(
            fields.list(
                "supports",
                value -> value.map(f -> PanelSupportMapping.read(f, knownLength, knownWidth))));
    Got<List<PanelEntry.Point>> report =
        FrameMapping.orEmpty(
            fields.list("report", value -> reportPoint(value, knownLength, knownWidth)));
    refuseSkew(fields, along, across);
    return fields.build(
        () ->
            new PanelEntry(
                origin.get(),
                along.get(),
                across.get(),
                length.get(),
                width.get(),
                thickness.get(),
                constants.get(),
                mesh.get(),
                thin.get(),
                supports.get(),
                report.get()));
  }

  private static Got<Vec3> direction(Fields fields, String key) {
    return Vectors.vector(fields, key)
        .where(vector -> vector.length() > 1e-9, "a direction, that is not three zeros,")
        .required()
        .map(vector -> vector.times(1 / vector.length()));
  }

  private static void refuseSkew(Fields fields, Got<Vec3> along, Got<Vec3> across) {
    if (along.isThere() && across.isThere()) {
      double skew = along.get().dot(across.get());
      if (Math.abs(skew) > SQUARE_ENOUGH) {
        fields.fault(
            "across",
            "is not at right angles to `along` (the cosine is " + Writing.number(skew, 4) + ")",
            "a direction at right angles is needed",
            "");
      }
    }
  }

  private static Got<PanelEntry.Constants> constants(Fields fields) {
    Got<Double> e1 = fields.number("E1", Range.POSITIVE).required();
    Got<Double> e2 = fields.number("E2", Range.POSITIVE).required();
    Got<Double> g12 = fields.number("G12", Range.POSITIVE).required();
    Got<Double> g13 = fields.number("G13", Range.POSITIVE).required();
    Got<Double> g23 = fields.number("G23", Range.POSITIVE).required();
    Got<Double> nu12 = fields.number("nu12", Range.ANY).required();
    Got<Double> density =
        fields
            .number("density_kg_m3", Range.NOT_NEGATIVE)
            .orDefault(0.0, "a panel without density weighs nothing");
    return fields.build(
        () ->
            new PanelEntry.Constants(
                e1.get(), e2.get(), g12.get(), g13.get(), g23.get(), nu12.get(), density.get()));
  }

  private static Got<Optional<PanelEntry.Mesh>> mesh(Fields fields) {
    String noun =
        "auto or a list of 2 whole numbers from " + FEWEST_ELEMENTS + " to " + MOST_ELEMENTS;
    return fields
        .either("mesh", noun, value -> meshOf(value, noun))
        .optional()
        .map(given -> given.orElse(Optional.empty()));
  }

  private static Got<Optional<PanelEntry.Mesh>> meshOf(Value value, String noun) {
    if (!value.isList()) {
      return value
          .as(Kinds.choice(Map.of("auto", "auto")).named(noun))
          .map(auto -> Optional.empty());
    }
    Got<List<Integer>> counts =
        value.list(item -> item.as(Kinds.wholeNumber(FEWEST_ELEMENTS, MOST_ELEMENTS)));
    if (counts.isThere() && counts.get().size() != 2) {
      return value.wrongCount(counts.get().size(), noun);
    }
    return counts.map(list -> Optional.of(new PanelEntry.Mesh(list.get(0), list.get(1))));
  }

  private static Got<PanelEntry.Point> reportPoint(Value value, double length, double width) {
    Got<PanelEntry.Point> point = Points.point(value);
    boolean off =
        point.isThere()
            && (point.get().x() < 0
                || point.get().x() > length
                || point.get().y() < 0
                || point.get().y() > width);
    return off ? value.note("lies off the panel", Points.onPanel(length, width), "") : point;
  }
}
