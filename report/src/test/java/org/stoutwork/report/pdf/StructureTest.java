package org.stoutwork.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.layout.Layouter;

class StructureTest {

  private static List<PDStructureElement> elements() throws IOException {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    byte[] bytes = new PdfPress(type).print(new Layouter(type).layOut(Demo.sheet(Paper.A4, type)));
    List<PDStructureElement> found = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      collect(document.getDocumentCatalog().getStructureTreeRoot(), found);
    }
    return found;
  }

  private static void collect(PDStructureNode node, List<PDStructureElement> found) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        found.add(element);
        collect(element, found);
      }
    }
  }

  @Test
  void headings_tables_lists_and_figures_are_tagged_in_reading_order() throws IOException {
    List<String> roles = elements().stream().map(PDStructureElement::getStructureType).toList();
    assertEquals("Document", roles.get(0));
    assertEquals(4, roles.stream().filter("H1"::equals).count());
    assertEquals(17, roles.stream().filter("TH"::equals).count());
    assertEquals(2, roles.stream().filter("LI"::equals).count());
    assertTrue(roles.indexOf("H1") < roles.lastIndexOf("Table"));
    assertTrue(roles.indexOf("Table") < roles.indexOf("Figure"));
    assertTrue(roles.indexOf("Figure") < roles.indexOf("Formula"));
  }

  @Test
  void figures_and_formulas_have_words_for_those_who_cannot_see_them() throws IOException {
    int counted = 0;
    for (PDStructureElement element : elements()) {
      String role = element.getStructureType();
      if (role.equals("Figure") || role.equals("Formula")) {
        assertNotNull(element.getAlternateDescription(), role);
        assertFalse(element.getAlternateDescription().isBlank());
        counted++;
      }
    }
    assertEquals(7, counted);
  }

  @Test
  void head_cells_say_that_they_head_a_column() throws IOException {
    for (PDStructureElement element : elements()) {
      if (element.getStructureType().equals("TH")) {
        assertTrue(element.getAttributes().toString().contains("Scope=Column"));
      }
    }
  }
}
