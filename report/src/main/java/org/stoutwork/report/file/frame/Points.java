package org.stoutwork.report.file.frame;

import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;
import org.stoutwork.report.file.tree.ShortNumber;

/** Points on panels. */
final class Points {

  private Points() {}

  static Got<PanelEntry.Point> point(Value value) {
    return value.numbers(2, Range.ANY).map(xy -> new PanelEntry.Point(xy.get(0), xy.get(1)));
  }

  static Got<PanelEntry.Point> required(Fields fields, String key) {
    return fields.either(key, "a list of 2 numbers", Points::point).required();
  }

  static String onPanel(PanelEntry panel) {
    return onPanel(panel.length(), panel.width());
  }

  static String onPanel(double length, double width) {
    return "a point from [0, 0] to ["
        + ShortNumber.of(length)
        + ", "
        + ShortNumber.of(width)
        + "] is needed";
  }
}
