package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Bars;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/** Sets bars one below another: label, bar with its figure, word. */
final class BarsSetter {

  private static final double LABEL = 0.36;
  private static final double GAP = 4;
  private static final double APART = 2;

  private BarsSetter() {}

  static List<Band> set(Bars bars, Setting setting) {
    List<Band> axis = List.of(axis(setting));
    List<Band> bands = new ArrayList<>();
    bands.add(axis.get(0).spaced(2.5).bonded(Bond.TIGHT));
    for (Bars.Bar bar : bars.bars()) {
      row(bar, setting).forEach(band -> bands.add(band.under(axis)));
    }
    return bands;
  }

  private static Band axis(Setting setting) {
    Type type = Type.DENSE;
    double left = setting.width() * LABEL + GAP;
    BarMarks marks = new BarMarks(Type.BODY, setting.measure());
    double limit = left + marks.limit(setting.width() - left - marks.wordWidth() - APART);
    return Band.of(
        type.leading(),
        List.of(
            new Piece(
                Tag.NONE, List.of(figure("0", left, type), figure("limit 1.0", limit, type)))));
  }

  private static Mark figure(String text, double x, Type type) {
    return new Mark.Label(
        new Point(x, type.baseline()),
        RichText.plain(text),
        type.points(),
        Align.CENTRE,
        0,
        Ink.DARK);
  }

  private static List<Band> row(Bars.Bar bar, Setting setting) {
    Type type = Type.BODY;
    int tag = setting.tag(Role.P);
    double labelWidth = setting.width() * LABEL;
    List<Band> label =
        new TextLines(setting, type, Ink.BLACK).bands(bar.label(), tag, 0, labelWidth);
    double barLeft = labelWidth + GAP;
    BarMarks marks = new BarMarks(type, setting.measure());
    double barWidth = setting.width() - barLeft - marks.wordWidth() - APART;
    Point corner = new Point(barLeft, marks.top(type.baseline() + 0.3));
    RichText word = BarMarks.word(bar.utilisation().verdict());
    Mark wordLabel =
        new Mark.Label(
            new Point(setting.width(), type.baseline() + 0.3),
            word,
            type.points(),
            Align.RIGHT,
            0,
            Ink.BLACK);
    List<Piece> added =
        List.of(
            new Piece(Tag.NONE, marks.shapes(bar.utilisation(), corner, barWidth)),
            new Piece(tag, List.of(marks.number(bar.utilisation(), corner, barWidth), wordLabel)));
    List<Band> with = Bands.first(label, b -> joined(b, added));
    with = Bands.last(with, b -> b.framed(List.of(), 0, 0, b.height() + 0.9));
    return Bands.together(with, Bond.FIRM);
  }

  private static Band joined(Band label, List<Piece> added) {
    List<Piece> all = new ArrayList<>();
    label.pieces().forEach(p -> all.add(p.moved(0, 0.3)));
    all.addAll(added);
    return Band.of(label.height() + 0.3, all);
  }
}
