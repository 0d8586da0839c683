package org.stoutwork.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.layout.Layouter;

class RenderingTest {

  private static final double DPI = 72;
  private static final double PIXELS_PER_MM = DPI / 25.4;

  private static boolean inked(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xFF) < 200;
  }

  @Test
  void pages_carry_ink_inside_the_printable_area_and_nowhere_else() throws IOException {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    Bounds area = PageSetup.usual(Paper.A4).printable();
    byte[] bytes = new PdfPress(type).print(new Layouter(type).layOut(Demo.sheet(Paper.A4, type)));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        BufferedImage image = renderer.renderImageWithDPI(page, (float) DPI, ImageType.GRAY);
        assertEquals(0, inkOutside(image, area), "page " + (page + 1));
        assertTrue(inkInside(image) > 500, "page " + (page + 1));
      }
    }
  }

  @Test
  void a_drawing_lands_where_the_layout_says() throws IOException {
    Sketch sketch = new Sketch();
    sketch.area(Sketch.corners(new Point(30, 10), new Point(50, 30)), Fill.of(Ink.BLACK));
    sketch.line(new Point(2, 2), new Point(98, 2), Stroke.HAIR);
    Sheet sheet =
        new Sheet(
            Demo.about(),
            PageSetup.usual(Paper.A4),
            Furniture.of("", "", ""),
            List.of(Figures.of(Figures.Figure.of(sketch.drawing(100, 40), "c", "a", ""))));
    Bounds column = sheet.setup().column();
    double left = column.left() + (column.width() - 100) / 2;
    try (PDDocument document = Loader.loadPDF(PdfPress.print(sheet))) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
      assertTrue(inked(image, pixel(left + 31), pixel(column.top() + 11)));
      assertTrue(inked(image, pixel(left + 49), pixel(column.top() + 29)));
      assertFalse(inked(image, pixel(left + 28), pixel(column.top() + 20)));
      assertFalse(inked(image, pixel(left + 40), pixel(column.top() + 32)));
    }
  }

  private static int pixel(double mm) {
    return (int) Math.round(mm * PIXELS_PER_MM);
  }

  private static int inkOutside(BufferedImage image, Bounds area) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        boolean inside =
            x + 1 >= (area.left() - 0.4) * PIXELS_PER_MM
                && x <= (area.right() + 0.4) * PIXELS_PER_MM
                && y + 1 >= (area.top() - 0.4) * PIXELS_PER_MM
                && y <= (area.bottom() + 0.4) * PIXELS_PER_MM;
        if (!inside && inked(image, x, y)) {
          count++;
        }
      }
    }
    return count;
  }

  private static int inkInside(BufferedImage image) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (inked(image, x, y)) {
          count++;
        }
      }
    }
    return count;
  }
}
