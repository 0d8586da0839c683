package org.stoutwork.report.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.layout.Layouter;
import org.stoutwork.report.sheet.page.Page;
import org.stoutwork.report.sheet.page.PagedSheet;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Tag;

/**
 * Prints pages into a tagged PDF file in memory: embedded fonts, structure for screen readers, an
 * outline, and metadata taken from the sheet alone. Same pages, same bytes, whatever the time, the
 * time zone or the locale.
 */
public final class PdfPress {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final TypeCase type;

  /** Prints with the given type, the same that measured the pages. */
  public PdfPress(TypeCase type) {
    this.type = type;
  }

  /**
   * Sets a sheet on pages and prints it, showing the code of any sign that no font has.
   *
   * @throws org.stoutwork.report.sheet.layout.LayoutFault if something does not fit
   */
  public static byte[] print(Sheet sheet) {
    TypeCase type = TypeCase.open(MissingGlyph.SHOW_CODE);
    return new PdfPress(type).print(new Layouter(type).layOut(sheet));
  }

  /** The pages as a file. */
  public byte[] print(PagedSheet sheet) {
    type.settle();
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
    Rectangle paper =
        new Rectangle(
            (float) (sheet.paper().width() * POINTS_PER_MM),
            (float) (sheet.paper().height() * POINTS_PER_MM));
    try (Document document = new Document(paper)) {
      PdfWriter writer = PdfWriter.getInstance(document, out);
      writer.setPdfVersion(PdfWriter.VERSION_1_7);
      writer.setTagged();
      writer.setCompressionLevel(9);
      document.open();
      Metadata.write(sheet.about(), writer);
      Structure structure = Structure.build(sheet, writer);
      for (Page page : sheet.pages()) {
        if (page.number() > 1) {
          document.newPage();
        }
        writer.setTabs(PdfName.S);
        paint(page, sheet, structure, writer.getDirectContent());
      }
      Outline.write(sheet, writer);
    } catch (DocumentException | IOException e) {
      throw new PdfFault("the file cannot be made: " + e.getMessage(), e);
    }
    return CrossReferences.righted(out.toByteArray());
  }

  private void paint(Page page, PagedSheet sheet, Structure structure, PdfContentByte canvas) {
    MarkPainter painter = new MarkPainter(canvas, type, sheet.paper().height());
    for (Piece piece : page.pieces()) {
      if (piece.marks().isEmpty()) {
        continue;
      }
      if (piece.tag() == Tag.NONE) {
        canvas.beginMarkedContentSequence(new PdfName("Artifact"));
      } else {
        PdfStructureElement element = structure.element(piece.tag());
        canvas.beginMarkedContentSequence(element);
      }
      piece.marks().forEach(painter::paint);
      canvas.endMarkedContentSequence();
    }
  }
}
