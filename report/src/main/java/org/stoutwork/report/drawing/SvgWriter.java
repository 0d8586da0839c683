package org.stoutwork.report.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a drawing as SVG text, one element a line, always the same for the same drawing. */
public final class SvgWriter {

  private final StringBuilder out = new StringBuilder();

  private SvgWriter() {}

  /** The drawing as a complete SVG document in millimetres. */
  public static String write(Drawing drawing) {
    SvgWriter writer = new SvgWriter();
    String w = number(drawing.width());
    String h = number(drawing.height());
    writer.line(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\""
            + " viewBox=\"0 0 %s %s\" font-family=\"sans-serif\">",
        w, h, w, h);
    drawing.marks().forEach(writer::mark);
    writer.line("</svg>");
    return writer.out.toString();
  }

  private void mark(Mark mark) {
    if (mark instanceof Mark.Path path) {
      line("<polyline points=\"%s\" fill=\"none\"%s/>", points(path.points()), pen(path.stroke()));
    } else if (mark instanceof Mark.Polygon polygon) {
      polygon(polygon);
    } else if (mark instanceof Mark.Arc arc) {
      arc(arc);
    } else if (mark instanceof Mark.Label label) {
      label(label);
    }
  }

  private void polygon(Mark.Polygon polygon) {
    String outline = polygon.outline().map(SvgWriter::pen).orElse("");
    line(
        "<polygon points=\"%s\" fill=\"%s\"%s/>",
        points(polygon.points()), paint(polygon.fill()), outline);
    if (polygon.fill() instanceof Fill.Hatch hatch) {
      for (List<Point> ends : HatchLines.within(polygon.points(), hatch)) {
        line("<polyline points=\"%s\" fill=\"none\"%s/>", points(ends), pen(hatch.stroke()));
      }
    }
  }

  private void arc(Mark.Arc arc) {
    String outline = arc.outline().map(SvgWriter::pen).orElse("");
    if (Math.abs(arc.sweep()) >= 360) {
      line(
          "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"%s/>",
          number(arc.centre().x()),
          number(arc.centre().y()),
          number(arc.radius()),
          paint(arc.fill()),
          outline);
    } else {
      line("<polyline points=\"%s\" fill=\"none\"%s/>", points(arc.polyline()), outline);
    }
  }

  private void label(Mark.Label label) {
    double em = label.points() * TextMeasure.MM_PER_POINT;
    String anchor =
        switch (label.align()) {
          case LEFT -> "start";
          case CENTRE -> "middle";
          case RIGHT -> "end";
        };
    String x = number(label.at().x());
    String y = number(label.at().y());
    String turn =
        label.degrees() == 0
            ? ""
            : String.format(
                Locale.ROOT, " transform=\"rotate(%s %s %s)\"", number(-label.degrees()), x, y);
    line(
        "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" fill=\"%s\"%s>%s</text>",
        x, y, number(em), anchor, label.ink().hex(), turn, spans(label.text(), em));
  }

  private static String spans(RichText text, double em) {
    StringBuilder spans = new StringBuilder();
    double rise = 0;
    for (Run run : text.runs()) {
      double next = run.level().rise() * em;
      spans.append("<tspan").append(look(run, em));
      if (next != rise) {
        spans.append(" dy=\"").append(number(rise - next)).append('"');
      }
      rise = next;
      spans.append('>').append(escape(run.text())).append("</tspan>");
    }
    return spans.toString();
  }

  private static String look(Run run, double em) {
    String face =
        switch (run.face()) {
          case BOLD -> " font-weight=\"bold\"";
          case ITALIC -> " font-style=\"italic\"";
          case REGULAR -> "";
        };
    return run.level() == Level.BASE
        ? face
        : face + " font-size=\"" + number(em * run.level().size()) + '"';
  }

  private static String paint(Fill fill) {
    return fill instanceof Fill.Plain plain ? plain.ink().hex() : "none";
  }

  private static String pen(Stroke stroke) {
    List<Double> dash = stroke.dash().lengths(stroke.width());
    String pattern =
        dash.isEmpty()
            ? ""
            : String.format(
                Locale.ROOT,
                " stroke-dasharray=\"%s\"",
                dash.stream().map(SvgWriter::number).collect(Collectors.joining(" ")));
    return String.format(
        Locale.ROOT,
        " stroke=\"%s\" stroke-width=\"%s\"%s",
        stroke.ink().hex(),
        number(stroke.width()),
        pattern);
  }

  private static String points(List<Point> points) {
    return points.stream()
        .map(p -> number(p.x()) + "," + number(p.y()))
        .collect(Collectors.joining(" "));
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    return text.equals("-0") ? "0" : text;
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private void line(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
