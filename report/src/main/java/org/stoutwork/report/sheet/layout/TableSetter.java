package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/**
 * Sets a table: level rules only, a heavy one over the head, its head again on every page. A row is
 * kept on one page unless it is taller than a page.
 */
final class TableSetter {

  private static final Stroke HEAVY = Stroke.of(0.6, Ink.BLACK);
  private static final Stroke LIGHT = Stroke.of(0.25, Ink.BLACK);
  private static final Stroke HAIR = Stroke.of(0.13, Ink.MID);

  private final Table table;
  private final Setting setting;
  private final Type type;
  private final ColumnWidths widths;

  TableSetter(Table table, Setting setting) {
    this.table = table;
    this.setting = setting;
    this.type = table.dense() ? Type.DENSE : Type.TABLE;
    this.widths = ColumnWidths.of(table.columns(), setting.width());
  }

  List<Band> set() {
    Setting inside = setting.within(setting.tag(Role.TABLE));
    List<Band> bands = new ArrayList<>(caption(inside));
    Setting headRow = inside.within(inside.tag(Role.ROW));
    List<Integer> tags =
        table.columns().stream().map(column -> headRow.tag(Role.HEAD_CELL)).toList();
    head(tags).forEach(band -> bands.add(band.bonded(Bond.TIGHT)));
    List<Band> repeated = head(Collections.nCopies(table.columns().size(), Tag.NONE));
    int last = table.rows().size() - 1;
    for (int i = 0; i <= last; i++) {
      List<Band> row = row(table.rows().get(i), inside, i == last);
      if ((i == 0 || i == last - 1) && i != last) {
        row = Bands.last(row, b -> b.bonded(Bond.ASKED));
      }
      row.forEach(band -> bands.add(band.under(repeated)));
    }
    return Bands.first(bands, b -> b.spaced(4).anchored(table.anchor()));
  }

  private List<Band> caption(Setting inside) {
    if (table.caption().isEmpty()) {
      return List.of();
    }
    int number = setting.numbering().table(table.anchor());
    RichText text =
        RichText.plain("Table\u00a0" + number + "\u2002", Face.BOLD).then(table.caption());
    List<Band> lines =
        new TextLines(setting, Type.NOTE, Ink.BLACK).bands(text, inside.tag(Role.CAPTION));
    List<Band> spaced = Bands.last(lines, b -> b.framed(List.of(), 0, 0, b.height() + 1));
    return spaced.stream().map(b -> b.bonded(Bond.TIGHT)).toList();
  }

  private List<Band> head(List<Integer> tags) {
    List<Cell> cells = new ArrayList<>();
    for (Column column : table.columns()) {
      cells.add(new Cell.Text(column.head().in(Face.BOLD)));
    }
    List<Band> bands = new RowSetter(table.columns(), widths, type, setting).set(cells, tags);
    List<Band> topped = Bands.first(bands, b -> ruled(b, HEAVY, 0));
    return Bands.last(topped, b -> ruled(b, LIGHT, b.height()));
  }

  private List<Band> row(Table.Row row, Setting inside, boolean last) {
    Setting cellsIn = inside.within(inside.tag(Role.ROW));
    List<Band> bands = row.spanning() ? spanning(row, cellsIn) : cells(row, cellsIn);
    List<Band> kept = Bands.together(bands, Bond.FIRM);
    Stroke rule = last ? LIGHT : HAIR;
    List<Band> ruled = Bands.last(kept, b -> ruled(b, rule, b.height()));
    return row.spanning() && !last ? Bands.last(ruled, b -> b.bonded(Bond.TIGHT)) : ruled;
  }

  private List<Band> cells(Table.Row row, Setting cellsIn) {
    List<Integer> tags = row.cells().stream().map(c -> cellsIn.tag(Role.CELL)).toList();
    return new RowSetter(table.columns(), widths, type, setting).set(row.cells(), tags);
  }

  private List<Band> spanning(Table.Row row, Setting cellsIn) {
    Column whole = Column.share(1, "");
    RichText text =
        row.cells().get(0) instanceof Cell.Text t ? t.text().in(Face.BOLD) : RichText.EMPTY;
    List<Integer> tags =
        List.of(setting.tags().addSpanning(cellsIn.parent(), table.columns().size()));
    ColumnWidths one = ColumnWidths.of(List.of(whole), setting.width());
    return new RowSetter(List.of(whole), one, type, setting)
        .set(List.of(new Cell.Text(text)), tags);
  }

  private Band ruled(Band band, Stroke stroke, double y) {
    Mark rule = new Mark.Path(List.of(new Point(0, y), new Point(setting.width(), y)), stroke);
    return band.framed(List.of(Piece.of(Tag.NONE, rule)), 0, 0, band.height());
  }
}
