package org.stoutwork.report.sheet.layout;

import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/**
 * Sets headings. A section opens with a rule across the column and a short heavy piece over its
 * number; numbers hang in a gutter of their own, so that they can be found at a glance.
 */
final class HeadingSetter {

  private static final double GUTTER = 14;
  private static final double RULE = 3.4;

  private HeadingSetter() {}

  static List<Band> set(Heading heading, Setting setting) {
    setting.numbering().heading(heading.level());
    String number =
        heading.numbered() ? setting.numbering().section(heading.level(), heading.anchor()) : "";
    int tag = setting.tag(role(heading.level()));
    double left = number.isEmpty() ? 0 : GUTTER;
    Type type = type(heading.level());
    List<Band> lines =
        new TextLines(setting, type, Ink.BLACK)
            .bands(heading.text().in(Face.BOLD), tag, left, setting.width() - left);
    List<Band> numbered = Bands.first(lines, b -> withNumber(b, number, tag, type));
    List<Band> ruled =
        heading.level() == 1 ? Bands.first(numbered, b -> ruled(b, setting)) : numbered;
    String entry = (number + " " + setting.resolved(heading.text()).characters()).strip();
    return finished(ruled.stream().map(b -> b.bonded(Bond.TIGHT)).toList(), heading, entry);
  }

  private static List<Band> finished(List<Band> bands, Heading heading, String entry) {
    return Bands.first(
        bands,
        b ->
            b.spaced(space(heading.level()))
                .anchored(heading.anchor())
                .listed(new Band.Entry(heading.level(), entry)));
  }

  private static Band withNumber(Band line, String number, int tag, Type type) {
    if (number.isEmpty()) {
      return line;
    }
    Mark label =
        new Mark.Label(
            new Point(0, type.baseline()),
            RichText.plain(number, Face.BOLD),
            type.points(),
            Align.LEFT,
            0,
            Ink.ACCENT);
    return line.framed(List.of(Piece.of(tag, label)), 0, 0, line.height());
  }

  private static Band ruled(Band line, Setting setting) {
    Mark thin =
        new Mark.Path(
            List.of(new Point(0, 0.2), new Point(setting.width(), 0.2)), Stroke.of(0.2, Ink.BLACK));
    Mark heavy =
        new Mark.Polygon(
            Sketch.corners(new Point(0, 0.1), new Point(GUTTER - 3, 1.5)),
            Fill.of(Ink.ACCENT),
            Optional.empty());
    return line.framed(
        List.of(new Piece(Tag.NONE, List.of(thin, heavy))), 0, RULE, line.height() + RULE);
  }

  private static Role role(int level) {
    return level == 1 ? Role.H1 : level == 2 ? Role.H2 : Role.H3;
  }

  private static Type type(int level) {
    return level == 1 ? Type.H1 : level == 2 ? Type.H2 : Type.H3;
  }

  private static double space(int level) {
    return level == 1 ? 9 : level == 2 ? 5.5 : 4;
  }
}
