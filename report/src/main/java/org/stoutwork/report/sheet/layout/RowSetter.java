package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Run;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Tag;

/** Sets one row of a table into one band for every line of its tallest cell. */
final class RowSetter {

  private static final double PAD = 0.7;
  private static final double APART = 2;
  private static final double SHORTEST_BAR = 24;

  private final List<Column> columns;
  private final ColumnWidths widths;
  private final Type type;
  private final Setting setting;

  RowSetter(List<Column> columns, ColumnWidths widths, Type type, Setting setting) {
    this.columns = columns;
    this.widths = widths;
    this.type = type;
    this.setting = setting;
  }

  /** The bands of a row; every cell has the element of the same place. */
  List<Band> set(List<Cell> cells, List<Integer> tags) {
    List<List<List<Piece>>> lines = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      lines.add(cell(cells.get(i), tags.get(i), i));
    }
    int tallest = lines.stream().mapToInt(List::size).max().orElse(1);
    List<Band> bands = new ArrayList<>();
    for (int k = 0; k < tallest; k++) {
      bands.add(band(lines, k, k == 0, k == tallest - 1));
    }
    return bands;
  }

  private Band band(List<List<List<Piece>>> lines, int k, boolean first, boolean last) {
    double top = first ? PAD : 0;
    List<Piece> pieces = new ArrayList<>();
    for (List<List<Piece>> cell : lines) {
      if (k < cell.size()) {
        cell.get(k).forEach(piece -> pieces.add(piece.moved(0, top)));
      }
    }
    return Band.of(top + type.leading() + (last ? PAD : 0), pieces);
  }

  private List<List<Piece>> cell(Cell cell, int tag, int column) {
    return cell instanceof Cell.Bar bar
        ? bar(bar.utilisation(), tag, column)
        : text(((Cell.Text) cell).text(), tag, column);
  }

  private List<List<Piece>> text(RichText text, int tag, int column) {
    List<List<Piece>> lines = new ArrayList<>();
    RichText resolved = setting.resolved(text);
    double width = widths.widths().get(column);
    for (RichText part : parted(resolved)) {
      for (RichText line : LineBreaker.lines(part, type.points(), width, setting.measure())) {
        lines.add(List.of(Piece.of(tag, label(line, column))));
      }
    }
    return lines;
  }

  /** The text cut at its line ends. */
  private static List<RichText> parted(RichText text) {
    List<RichText> parts = new ArrayList<>();
    List<Run> part = new ArrayList<>();
    for (Run run : text.runs()) {
      String[] pieces = run.text().split("\n", -1);
      for (int i = 0; i < pieces.length; i++) {
        if (i > 0) {
          parts.add(new RichText(part));
          part = new ArrayList<>();
        }
        part.add(run.with(pieces[i]));
      }
    }
    parts.add(new RichText(part));
    return parts;
  }

  private Mark label(RichText line, int column) {
    Align align = columns.get(column).align();
    double x = widths.lefts().get(column) + align.part() * widths.widths().get(column);
    return new Mark.Label(new Point(x, type.baseline()), line, type.points(), align, 0, Ink.BLACK);
  }

  private List<List<Piece>> bar(Utilisation utilisation, int tag, int column) {
    double left = widths.lefts().get(column);
    double width = widths.widths().get(column);
    BarMarks marks = new BarMarks(type, setting.measure());
    double wordWidth = marks.wordWidth();
    requireRoom(width, wordWidth, column);
    boolean narrow = width < SHORTEST_BAR + APART + wordWidth;
    double barWidth = narrow ? width : width - wordWidth - APART;
    Point corner = new Point(left, marks.top(type.baseline()));
    RichText word = BarMarks.word(utilisation.verdict());
    Mark wordLabel =
        new Mark.Label(
            new Point(narrow ? left : left + barWidth + APART, type.baseline()),
            word,
            type.points(),
            Align.LEFT,
            0,
            Ink.BLACK);
    Piece shapes = new Piece(Tag.NONE, marks.shapes(utilisation, corner, barWidth));
    Piece number = Piece.of(tag, marks.number(utilisation, corner, barWidth));
    Piece words = Piece.of(tag, wordLabel);
    return narrow
        ? List.of(List.of(shapes, number), List.of(words))
        : List.of(List.of(shapes, number, words));
  }

  private void requireRoom(double width, double wordWidth, int column) {
    double least = Math.max(SHORTEST_BAR, wordWidth);
    if (width < least) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "column \"%s\" holds a bar and is %.1f mm wide; a bar needs at least %.1f mm",
              columns.get(column).head().characters(),
              width,
              least));
    }
  }
}
