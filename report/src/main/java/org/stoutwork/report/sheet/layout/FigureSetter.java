package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;

/** Sets one or two figures with their captions, as one band that is never split. */
final class FigureSetter {

  private static final double GUTTER = 6;
  private static final double CAPTION_GAP = 1.8;

  private final Figures figures;
  private final Setting setting;

  FigureSetter(Figures figures, Setting setting) {
    this.figures = figures;
    this.setting = setting;
  }

  List<Band> set() {
    int count = figures.figures().size();
    double slot = (setting.width() - GUTTER * (count - 1)) / count;
    List<Drawing> fitted = figures.figures().stream().map(f -> fitted(f, slot)).toList();
    double tallest = fitted.stream().mapToDouble(Drawing::height).max().orElse(0);
    List<Piece> pieces = new ArrayList<>();
    List<String> anchors = new ArrayList<>();
    double height = 0;
    for (int i = 0; i < count; i++) {
      double left = i * (slot + GUTTER);
      height = Math.max(height, figure(i, fitted.get(i), left, slot, tallest, pieces));
      anchors.add(figures.figures().get(i).anchor());
    }
    Band band = Band.of(height, pieces).spaced(4);
    for (String anchor : anchors) {
      band = band.anchored(anchor);
    }
    return List.of(band);
  }

  private double figure(
      int index, Drawing drawing, double left, double slot, double tallest, List<Piece> pieces) {
    Figures.Figure figure = figures.figures().get(index);
    int tag = setting.tag(Role.FIGURE, figure.alternative());
    double inset = left + (slot - drawing.width()) / 2;
    pieces.add(new Piece(tag, drawing.marks()).moved(inset, tallest - drawing.height()));
    int number = setting.numbering().figure(figure.anchor());
    RichText caption =
        RichText.plain("Figure\u00a0" + number + "\u2002", Face.BOLD).then(figure.caption());
    int captionTag = setting.tag(Role.P);
    double y = tallest + CAPTION_GAP;
    for (Band line :
        new TextLines(setting, Type.NOTE, Ink.BLACK).bands(caption, captionTag, left, slot)) {
      for (Piece piece : line.pieces()) {
        pieces.add(piece.moved(0, y));
      }
      y += line.height();
    }
    return y;
  }

  private Drawing fitted(Figures.Figure figure, double slot) {
    Drawing drawing = figure.drawing();
    double room = setting.height() - 25;
    double scale = Math.min(1, Math.min(slot / drawing.width(), room / drawing.height()));
    if (drawing.smallestType() * scale < Type.LEAST_IN_FIGURES - 1e-6) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "figure \"%s\" is %.1f mm by %.1f mm; scaled to %.1f mm its lettering falls below %.0f points; draw it for that width",
              figure.caption().characters(),
              drawing.width(),
              drawing.height(),
              slot,
              Type.LEAST_IN_FIGURES));
    }
    return scale == 1 ? drawing : Scaling.of(drawing, scale);
  }
}
