package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.NotUnderstood;
import org.stoutwork.report.file.field.NumberText;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;
import org.stoutwork.report.file.tree.Nearest;
import org.stoutwork.report.file.tree.ShortNumber;

/** Lines on which a panel is held. */
final class PanelSupportMapping {

  private static final Pattern LINE = Pattern.compile("([xy])\\s*=\\s*(\\S+)");
  private static final List<String> EDGES =
      List.of("edge=left", "edge=right", "edge=front", "edge=back");
  private static final String HOLD = "fixed, compression-only or a stiffness above 0";

  private PanelSupportMapping() {}

  static Got<PanelSupport> read(Fields fields, double length, double width) {
    Got<PanelSupport.Line> line = fields.scalar("line", line(length, width)).required();
    Got<PanelSupport.Hold> hold =
        fields
            .either("w", HOLD, PanelSupportMapping::hold)
            .optional()
            .map(given -> given.orElse(new PanelSupport.Hold.Free()));
    Got<Boolean> along = slope(fields, "slopeAlong");
    Got<Boolean> across = slope(fields, "slopeAcross");
    if (!fields.has("w") && !along.orElse(true) && !across.orElse(true)) {
      fields.fault("holds nothing", "`w`, `slopeAlong` or `slopeAcross` is needed", "");
    }
    return fields.build(() -> new PanelSupport(line.get(), hold.get(), along.get(), across.get()));
  }

  private static Got<PanelSupport.Hold> hold(Value value) {
    if (value.isNumber()) {
      return value.as(Kinds.number(Range.POSITIVE)).map(PanelSupport.Hold.Elastic::new);
    }
    Map<String, PanelSupport.Hold> words =
        Words.inOrder(
            "fixed",
            new PanelSupport.Hold.Fixed(),
            Words.COMPRESSION_ONLY,
            new PanelSupport.Hold.CompressionOnly());
    return value.as(Kinds.choice(words).named(HOLD));
  }

  private static Got<Boolean> slope(Fields fields, String key) {
    return fields
        .choice(key, Words.inOrder("fixed", true, "free", false))
        .optional()
        .map(given -> given.orElse(false));
  }

  private static Kind<PanelSupport.Line> line(double length, double width) {
    return Kind.of(
        "a line on the panel such as `x=245`, `y=30`, `edge=left`, `edge=right`, `edge=front` or"
            + " `edge=back`",
        text -> lineOf(text, length, width),
        PanelSupportMapping::words);
  }

  static String words(PanelSupport.Line line) {
    return (line.constantX() ? "x=" : "y=") + ShortNumber.of(line.at());
  }

  private static PanelSupport.Line lineOf(String text, double length, double width)
      throws NotUnderstood {
    switch (text) {
      case "edge=left" -> {
        return new PanelSupport.Line(true, 0);
      }
      case "edge=right" -> {
        return new PanelSupport.Line(true, length);
      }
      case "edge=front" -> {
        return new PanelSupport.Line(false, 0);
      }
      case "edge=back" -> {
        return new PanelSupport.Line(false, width);
      }
      default -> {
        return coordinate(text, length, width);
      }
    }
  }

  private static PanelSupport.Line coordinate(String text, double length, double width)
      throws NotUnderstood {
    Matcher shape = LINE.matcher(text);
    if (!shape.matches()) {
      throw new NotUnderstood("", Nearest.question(Nearest.to(text, EDGES)));
    }
    boolean constantX = shape.group(1).equals("x");
    double at = NumberText.read(shape.group(2));
    double end = constantX ? length : width;
    if (at < 0 || at > end) {
      throw new NotUnderstood(
          shape.group(1) + " runs from 0 to " + ShortNumber.of(end) + " mm", "");
    }
    return new PanelSupport.Line(constantX, at);
  }
}
