package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.math.MathBox;
import org.stoutwork.report.sheet.page.Piece;

/** The rows of one line of a working, filled from the left. For one thread, and used once. */
final class WorkedRows {

  /** Width kept for the number of the line, mm. */
  static final double GUTTER = 11;

  private static final double ROW_GAP = 1.1;
  private static final double APART = 5;

  /** Narrower than this a note reads badly beside a formula, mm. */
  private static final double NARROWEST = 62;

  private final Setting setting;
  private final MathBox symbol;
  private final double column;
  private final int tag;
  private final String number;
  private final List<Band> done = new ArrayList<>();
  private List<MathBox> row = new ArrayList<>();
  private double used;

  /** Base line of the last row, mm below its top. */
  private double base;

  WorkedRows(Setting setting, MathBox symbol, double column, int tag, String number) {
    this.setting = setting;
    this.symbol = symbol;
    this.column = column;
    this.tag = tag;
    this.number = number;
  }

  /** Width of the rows, mm. */
  double width() {
    return setting.width() - GUTTER - column;
  }

  /** A part that goes on in the present row if it has room. */
  WorkedRows add(MathBox box) {
    if (!row.isEmpty() && used + box.width() > width()) {
      close();
    }
    row.add(box);
    used += box.width();
    return this;
  }

  /** A part behind the last one; a part without width leaves no trace. */
  WorkedRows addPlain(MathBox box) {
    return box.width() > 0 ? add(box) : this;
  }

  /** A formula that no row can hold, as running text. */
  void addText(RichText text) {
    close();
    List<Band> lines =
        new TextLines(setting, Type.BODY, Ink.BLACK).bands(text, tag, left() + 1, width() - 1);
    base = Type.BODY.baseline();
    lines.forEach(this::finish);
  }

  private void close() {
    if (!row.isEmpty()) {
      MathBox box = MathBox.row(row);
      double up = Math.max(box.ascent(), Type.BODY.baseline() - 0.6);
      double height = up + Math.max(box.descent(), 1.2) + ROW_GAP;
      row = new ArrayList<>();
      used = 0;
      base = up;
      finish(Band.of(height, List.of(new Piece(tag, box.at(left(), up)))));
    }
  }

  private double left() {
    return GUTTER + column;
  }

  /** The first row carries the number of the line and the symbol before the sign of equality. */
  private void finish(Band band) {
    done.add(done.isEmpty() ? opened(band) : band);
  }

  private Band opened(Band band) {
    RichText text = RichText.plain(number, Face.BOLD);
    Mark label =
        new Mark.Label(new Point(0, base), text, Type.TABLE.points(), Align.LEFT, 0, Ink.ACCENT);
    List<Piece> front =
        List.of(
            Piece.of(tag, label),
            new Piece(tag, symbol.at(GUTTER + column - symbol.width(), base)));
    return band.framed(front, 0, 0, band.height());
  }

  /** All rows, with a note beside the last one or below it. */
  List<Band> with(RichText note, int noteTag) {
    double end = used;
    close();
    double room = width() - end - APART;
    Type type = Type.DENSE;
    TextLines lines = new TextLines(setting, type, Ink.DARK);
    boolean beside = setting.measure().width(note, type.points()) <= room || room >= NARROWEST;
    double from = beside ? left() + end + APART : left() + 1;
    double width = beside ? room : width() - 1;
    List<Band> set = lines.bands(note, noteTag, from, width);
    if (beside) {
      int last = done.size() - 1;
      done.set(last, joined(done.get(last), set, type));
    } else {
      done.addAll(Bands.withoutOrphans(set));
    }
    return done;
  }

  /**
   * A row with its note beside it: the first line on the same base line, or higher where the row is
   * tall enough for the note to stand about its middle.
   */
  private Band joined(Band row, List<Band> note, Type type) {
    double down = base - type.baseline();
    double up = Math.min((note.size() - 1) * type.leading() / 2, Math.max(0, down - 0.3));
    double y = down - up;
    List<Piece> all = new ArrayList<>(row.pieces());
    for (Band line : note) {
      for (Piece piece : line.pieces()) {
        all.add(piece.moved(0, y));
      }
      y += line.height();
    }
    return Band.of(Math.max(row.height(), y), all);
  }
}
