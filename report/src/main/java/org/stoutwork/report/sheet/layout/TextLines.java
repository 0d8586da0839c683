package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.page.Piece;

/** Sets running text into one band a line. */
final class TextLines {

  private final Setting setting;
  private final Type type;
  private final Ink ink;

  TextLines(Setting setting, Type type, Ink ink) {
    this.setting = setting;
    this.type = type;
    this.ink = ink;
  }

  /** The lines of a text as an element of the structure, from the column's left edge. */
  List<Band> bands(RichText text, int tag) {
    return bands(text, tag, 0, setting.width());
  }

  /** The lines of a text in part of the column. */
  List<Band> bands(RichText text, int tag, double left, double width) {
    List<Band> bands = new ArrayList<>();
    RichText resolved = setting.resolved(text);
    for (RichText line : LineBreaker.lines(resolved, type.points(), width, setting.measure())) {
      bands.add(Band.of(type.leading(), List.of(piece(line, tag, left))));
    }
    return bands;
  }

  private Piece piece(RichText line, int tag, double left) {
    return Piece.of(
        tag,
        new Mark.Label(new Point(left, type.baseline()), line, type.points(), Align.LEFT, 0, ink));
  }
}
