package org.stoutwork.report.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.sheet.page.PagedSheet;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/** The structure of a file: one element for every tag, in reading order. */
final class Structure {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Map<Integer, PdfStructureElement> elements = new HashMap<>();

  private Structure() {}

  static Structure build(PagedSheet sheet, PdfWriter writer) {
    Structure structure = new Structure();
    for (Tag tag : sheet.tags()) {
      PdfName name = new PdfName(tag.role().tag());
      PdfStructureElement element =
          tag.parent() == Tag.NONE
              ? new PdfStructureElement(writer.getStructureTreeRoot(), name)
              : new PdfStructureElement(structure.element(tag.parent()), name);
      if (!tag.alternative().isEmpty()) {
        element.put(new PdfName("Alt"), new PdfString(tag.alternative(), PdfObject.TEXT_UNICODE));
      }
      structure.elements.put(tag.id(), element);
      structure.attributes(tag, element, sheet);
    }
    return structure;
  }

  PdfStructureElement element(int id) {
    return elements.get(id);
  }

  private void attributes(Tag tag, PdfStructureElement element, PagedSheet sheet) {
    if (tag.role() == Role.HEAD_CELL) {
      PdfDictionary scope = owned("Table");
      scope.put(new PdfName("Scope"), new PdfName("Column"));
      element.put(PdfName.A, scope);
    } else if (tag.columns() > 1) {
      PdfDictionary span = owned("Table");
      span.put(new PdfName("ColSpan"), new PdfNumber(tag.columns()));
      element.put(PdfName.A, span);
    } else if (tag.role() == Role.FIGURE || tag.role() == Role.FORMULA) {
      PdfDictionary layout = owned("Layout");
      layout.put(new PdfName("Placement"), new PdfName("Block"));
      layout.put(new PdfName("BBox"), box(tag.id(), sheet));
      element.put(PdfName.A, layout);
    }
  }

  private static PdfDictionary owned(String owner) {
    PdfDictionary attribute = new PdfDictionary();
    attribute.put(PdfName.O, new PdfName(owner));
    return attribute;
  }

  private static PdfArray box(int tag, PagedSheet sheet) {
    List<Mark> marks =
        sheet.pages().stream()
            .flatMap(page -> page.pieces().stream())
            .filter(piece -> piece.tag() == tag)
            .flatMap(piece -> piece.marks().stream())
            .toList();
    PdfArray array = new PdfArray();
    if (!marks.isEmpty()) {
      Bounds reach = Extent.of(marks, (text, face, points) -> 0);
      double height = sheet.paper().height();
      for (double mm :
          new double[] {
            reach.left(), height - reach.bottom(), reach.right(), height - reach.top()
          }) {
        array.add(new PdfNumber((float) (mm * POINTS_PER_MM)));
      }
    }
    return array;
  }
}
