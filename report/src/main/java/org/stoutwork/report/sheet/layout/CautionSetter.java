package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/**
 * Sets a caution: the signal word in capitals, a drawn sign, and a frame that grows heavier with
 * the grade. A box that reaches over a page stays open at the cut.
 */
final class CautionSetter {

  private static final double LEFT = 18;
  private static final double PAD = 1.7;
  private static final double STRIPE = 2.2;

  private final Caution caution;
  private final Setting setting;

  CautionSetter(Caution caution, Setting setting) {
    this.caution = caution;
    this.setting = setting;
  }

  List<Band> set() {
    Setting inside = setting.within(setting.tag(Role.SECTION));
    List<Band> bands = new ArrayList<>(lines(inside, headline(), 0));
    bands.set(0, withSign(bands.get(0)));
    for (RichText paragraph : caution.body()) {
      bands.addAll(lines(inside, paragraph, 0.3));
    }
    List<Band> framed = new ArrayList<>();
    for (int i = 0; i < bands.size(); i++) {
      framed.add(framed(bands.get(i), i == 0, i == bands.size() - 1));
    }
    Bond bond = framed.size() <= 12 ? Bond.FIRM : Bond.ASKED;
    List<Band> kept = Bands.together(framed, bond);
    return Bands.spaced(Bands.first(kept, b -> kept.size() > 1 ? b.bonded(Bond.TIGHT) : b), 2.4);
  }

  private RichText headline() {
    RichText word = RichText.plain(caution.grade().name(), Face.BOLD);
    return caution.headline().isEmpty()
        ? word
        : word.then(RichText.plain("\u2002")).then(caution.headline().in(Face.BOLD));
  }

  private List<Band> lines(Setting inside, RichText text, double above) {
    double width = setting.width() - LEFT - PAD - 1;
    List<Band> lines =
        new TextLines(inside, Type.TABLE, Ink.BLACK).bands(text, inside.tag(Role.P), LEFT, width);
    return Bands.first(
        Bands.withoutOrphans(lines), b -> b.framed(List.of(), 0, above, b.height() + above));
  }

  private Band withSign(Band line) {
    Point middle = new Point(9.5, 4.2);
    return line.framed(
        List.of(new Piece(Tag.NONE, CautionSign.marks(caution.grade(), middle))),
        0,
        0,
        line.height());
  }

  private Band framed(Band band, boolean first, boolean last) {
    double top = first ? PAD : 0;
    double least = first && last ? 11 : 0;
    double height = Math.max(least, band.height() + top + (last ? PAD : 0));
    List<Mark> frame = new ArrayList<>();
    double w = weight();
    double right = setting.width();
    frame.add(edge(0, 0, w, height));
    frame.add(edge(right - w, 0, right, height));
    if (first) {
      frame.add(edge(0, 0, right, w));
    }
    if (last) {
      frame.add(edge(0, height - w, right, height));
    }
    if (caution.grade() == Caution.Grade.DANGER) {
      double foot = last ? height - w : height;
      frame.add(stripe(w, first ? w : 0, foot));
      frame.add(edge(w + STRIPE, first ? w : 0, w + STRIPE + 0.3, foot));
    }
    return band.framed(List.of(new Piece(Tag.NONE, frame)), 0, top, height);
  }

  private static Mark edge(double left, double top, double right, double bottom) {
    return new Mark.Polygon(
        Sketch.corners(new Point(left, top), new Point(right, bottom)),
        Fill.of(Ink.BLACK),
        Optional.empty());
  }

  private static Mark stripe(double left, double top, double bottom) {
    return new Mark.Polygon(
        Sketch.corners(new Point(left, top), new Point(left + STRIPE, bottom)),
        new Fill.Hatch(45, 1.2, Stroke.of(0.45, Ink.BLACK)),
        Optional.empty());
  }

  private double weight() {
    return switch (caution.grade()) {
      case NOTICE -> 0.2;
      case CAUTION -> 0.4;
      case WARNING -> 0.9;
      case DANGER -> 1.4;
    };
  }
}
