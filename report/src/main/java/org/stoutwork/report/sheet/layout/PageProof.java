package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.page.Page;
import org.stoutwork.report.sheet.page.PagedSheet;

/** Reads finished pages as a proof-reader does: nothing over the edge, no line over another. */
final class PageProof {

  private static final double TOLERANCE = 0.35;

  private PageProof() {}

  static void require(PagedSheet sheet, PageSetup setup, TextMeasure measure) {
    for (Page page : sheet.pages()) {
      List<Bounds> lines = new ArrayList<>();
      List<Mark.Label> labels = new ArrayList<>();
      for (Mark mark : page.marks()) {
        Bounds reach = Extent.of(mark, measure);
        requireInside(reach, mark, page, setup);
        if (mark instanceof Mark.Label label && label.degrees() == 0) {
          lines.add(reach);
          labels.add(label);
        }
      }
      requireApart(lines, labels, page);
    }
  }

  private static void requireInside(Bounds reach, Mark mark, Page page, PageSetup setup) {
    if (!setup.printable().holds(reach, TOLERANCE)) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "on page %d something leaves the printable area %s: %s reaches %s",
              page.number(),
              setup.printable(),
              mark,
              reach));
    }
  }

  private static void requireApart(List<Bounds> lines, List<Mark.Label> labels, Page page) {
    for (int i = 0; i < lines.size(); i++) {
      for (int k = i + 1; k < lines.size(); k++) {
        if (core(lines.get(i)).overlaps(core(lines.get(k)), TOLERANCE)) {
          throw new LayoutFault(
              String.format(
                  Locale.ROOT,
                  "on page %d \"%s\" and \"%s\" overlap",
                  page.number(),
                  labels.get(i).text().characters(),
                  labels.get(k).text().characters()));
        }
      }
    }
  }

  /** The part of a line of text where ink is dense: ascenders and descenders may interlock. */
  private static Bounds core(Bounds line) {
    double h = line.height();
    return new Bounds(line.left(), line.top() + 0.2 * h, line.right(), line.bottom() - 0.2 * h);
  }
}
