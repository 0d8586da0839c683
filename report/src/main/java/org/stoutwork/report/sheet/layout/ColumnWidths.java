package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.sheet.Column;

/**
 * Where the columns of a table lie.
 *
 * @param lefts left edges, mm
 * @param widths mm, gaps between columns not included
 */
record ColumnWidths(List<Double> lefts, List<Double> widths) {

  private static final double GAP = 3.4;
  private static final double LEAST = 6;

  static ColumnWidths of(List<Column> columns, double total) {
    double free = total - GAP * (columns.size() - 1);
    double shares = 0;
    for (Column column : columns) {
      if (column.fixed()) {
        free -= column.width();
      } else {
        shares += column.width();
      }
    }
    List<Double> lefts = new ArrayList<>();
    List<Double> widths = new ArrayList<>();
    double x = 0;
    for (Column column : columns) {
      double width = column.fixed() ? column.width() : free * column.width() / shares;
      requireRoom(column, width, total, x);
      lefts.add(x);
      widths.add(width);
      x += width + GAP;
    }
    return new ColumnWidths(lefts, widths);
  }

  private static void requireRoom(Column column, double width, double total, double left) {
    if (!(width >= LEAST) || left + width > total + 1e-6) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "column \"%s\" would get %.1f mm from %.1f mm on in a table of %.1f mm; columns need at least %.0f mm; make fixed columns narrower or the table shorter of columns",
              column.head().characters(),
              width,
              left,
              total,
              LEAST));
    }
  }
}
