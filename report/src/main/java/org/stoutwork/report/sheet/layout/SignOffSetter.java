package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
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
import org.stoutwork.report.sheet.SignOff;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/** Sets ruled lines to sign on, one block a role. */
final class SignOffSetter {

  private static final Type SMALL = Type.DENSE;
  private static final double GAP = 4;
  private static final double LINE = 15.5;
  private static final double OPINION = 26;
  private static final double HEIGHT = 29.5;

  private SignOffSetter() {}

  static List<Band> set(SignOff signOff, Setting setting) {
    List<Band> bands = new ArrayList<>();
    for (String role : signOff.roles()) {
      bands.addAll(role(role, setting, bands.isEmpty() ? 3 : 0));
    }
    return bands;
  }

  private static List<Band> role(String role, Setting setting, double before) {
    int tag = setting.tag(Role.P);
    List<Piece> pieces = new ArrayList<>();
    double width = setting.width();
    pieces.add(rule(0, 0.2, width, Stroke.of(0.4, Ink.BLACK)));
    List<Band> name =
        new TextLines(setting, Type.NOTE, Ink.BLACK)
            .bands(RichText.plain(role, Face.BOLD), tag, 0, width);
    double y = 1;
    for (Band line : name) {
      double down = y;
      line.pieces().forEach(p -> pieces.add(p.moved(0, down)));
      y += line.height();
    }
    double lower = y - 1 - Type.NOTE.leading();
    fields(tag, lower, width, pieces);
    opinions(tag, lower, width, pieces);
    return List.of(Band.of(HEIGHT + lower, pieces).spaced(before));
  }

  private static void fields(int tag, double lower, double width, List<Piece> pieces) {
    String[] names = {"Name", "Qualification or role", "Signature", "Date"};
    double[] shares = {0.27, 0.25, 0.28, 0.20};
    double x = 0;
    for (int i = 0; i < names.length; i++) {
      double wide = shares[i] * (width - 3 * GAP);
      pieces.add(rule(x, LINE + lower, x + wide, Stroke.of(0.2, Ink.BLACK)));
      pieces.add(small(tag, names[i], x, LINE + lower + 0.3));
      x += wide + GAP;
    }
  }

  private static void opinions(int tag, double lower, double width, List<Piece> pieces) {
    String[] words = {"agree", "agree with comments", "not agreed"};
    double[] places = {0, 17, 53};
    double base = OPINION + lower;
    for (int i = 0; i < words.length; i++) {
      Point corner = new Point(places[i] + 0.2, base - 3);
      pieces.add(
          Piece.of(
              Tag.NONE,
              new Mark.Polygon(
                  Sketch.corners(corner, corner.plus(3, 3)),
                  Fill.NONE,
                  Optional.of(Stroke.of(0.25, Ink.BLACK)))));
      pieces.add(small(tag, words[i], places[i] + 4.4, base - SMALL.baseline() - 0.3));
    }
    double comment = 76;
    pieces.add(small(tag, "Comment", comment, base - SMALL.baseline() - 0.3));
    pieces.add(rule(comment + 16, base, width, Stroke.of(0.2, Ink.BLACK)));
  }

  private static Piece small(int tag, String text, double x, double top) {
    return Piece.of(
        tag,
        new Mark.Label(
            new Point(x, top + SMALL.baseline()),
            RichText.plain(text),
            SMALL.points(),
            Align.LEFT,
            0,
            Ink.DARK));
  }

  private static Piece rule(double from, double y, double to, Stroke stroke) {
    return Piece.of(Tag.NONE, new Mark.Path(List.of(new Point(from, y), new Point(to, y)), stroke));
  }
}
