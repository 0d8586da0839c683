package org.stoutwork.report.pdf;

import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfWriter;
import org.stoutwork.report.sheet.page.Bookmark;
import org.stoutwork.report.sheet.page.PagedSheet;

/** Writes the outline that readers show beside the pages. */
final class Outline {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private Outline() {}

  static void write(PagedSheet sheet, PdfWriter writer) {
    PdfOutline root = writer.getDirectContent().getRootOutline();
    PdfOutline[] parents = {root, root, root, root};
    for (Bookmark mark : sheet.outline()) {
      double top = (sheet.paper().height() - mark.top()) * POINTS_PER_MM;
      PdfDestination place = new PdfDestination(PdfDestination.XYZ, 0, (float) top, 0);
      PdfAction go = PdfAction.gotoLocalPage(mark.page(), place, writer);
      PdfOutline entry = new PdfOutline(parents[mark.level() - 1], go, mark.text(), false);
      for (int level = mark.level(); level < parents.length; level++) {
        parents[level] = entry;
      }
    }
    if (!sheet.outline().isEmpty()) {
      writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
    }
  }
}
