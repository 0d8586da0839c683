package org.stoutwork.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.layout.Layouter;

class PdfPressTest {

  private static byte[] demo(Paper paper) {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    return new PdfPress(type).print(new Layouter(type).layOut(Demo.sheet(paper, type)));
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(true);
    if (page > 0) {
      stripper.setStartPage(page);
      stripper.setEndPage(page);
    }
    return stripper.getText(document);
  }

  @Test
  void two_runs_give_the_same_bytes() {
    assertArrayEquals(demo(Paper.A4), demo(Paper.A4));
  }

  @Test
  void one_type_case_prints_the_same_bytes_again() {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    PdfPress press = new PdfPress(type);
    var pages = new Layouter(type).layOut(Demo.sheet(Paper.LETTER, type));
    byte[] first = press.print(pages);
    assertArrayEquals(first, press.print(pages));
    assertArrayEquals(first, demo(Paper.LETTER));
  }

  @Test
  void neither_time_zone_nor_locale_change_a_byte() {
    byte[] usual = demo(Paper.A4);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      for (String tag : List.of("de", "tr", "ar-EG-u-nu-arab", "fa", "hi-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertArrayEquals(usual, demo(Paper.A4), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void text_can_be_read_back_in_order_with_page_numbers() throws IOException {
    try (PDDocument document = Loader.loadPDF(demo(Paper.A4))) {
      int pages = document.getNumberOfPages();
      for (int page = 1; page <= pages; page++) {
        assertTrue(text(document, page).contains("Page " + page + " of " + pages));
        assertTrue(text(document, page).contains("Workshop hall, north wall"));
      }
      String all = text(document, 0);
      int at = 0;
      for (String part :
          List.of(
              "Check sheet for a joined workbench",
              "Prepared",
              "Result at a glance",
              "Geometry and members",
              "leg 26",
              "Workings",
              "7.691\u00a0MPa",
              "Cautions",
              "DANGER")) {
        int found = all.indexOf(part, at);
        assertTrue(found >= 0, part);
        at = found;
      }
      assertTrue(all.contains("≤ ≥ ≠ ≈ √ Δ Σ φ λ ψ η µ → ⅜"));
    }
  }

  @Test
  void every_font_is_embedded_as_a_subset() throws IOException {
    try (PDDocument document = Loader.loadPDF(demo(Paper.A4))) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
        }
      }
    }
  }

  @Test
  void the_file_says_what_it_is() throws IOException {
    try (PDDocument document = Loader.loadPDF(demo(Paper.A4))) {
      var information = document.getDocumentInformation();
      assertEquals("Check sheet: demonstration bench", information.getTitle());
      assertEquals("Stoutwork 0.1.0", information.getCreator());
      assertEquals(1_773_480_413_000L, information.getCreationDate().getTimeInMillis());
      var catalog = document.getDocumentCatalog();
      assertEquals("en-GB", catalog.getLanguage());
      assertTrue(catalog.getMarkInfo().isMarked());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      assertNotNull(catalog.getDocumentOutline().getFirstChild());
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertTrue(xmp.contains("<pdfaid:part>3</pdfaid:part>"));
      assertTrue(xmp.contains("<xmp:CreateDate>2026-03-14T09:26:53Z</xmp:CreateDate>"));
    }
  }

  @Test
  void pages_have_the_size_of_their_paper() throws IOException {
    try (PDDocument document = Loader.loadPDF(demo(Paper.LETTER))) {
      PDRectangle box = document.getPage(0).getMediaBox();
      assertEquals(612, box.getWidth(), 0.01);
      assertEquals(792, box.getHeight(), 0.01);
    }
  }

  @Test
  void a_sign_no_font_has_is_refused_by_name() {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    PdfFault fault =
        assertThrows(PdfFault.class, () -> type.width("ab\uD83E\uDE9A", Face.REGULAR, 10));
    assertEquals(
        "no embedded font has the sign [U+1FA9A] of \"ab\uD83E\uDE9A\"", fault.getMessage());
  }

  @Test
  void a_sign_no_font_has_is_shown_by_its_code_and_measured_so() {
    TypeCase type = TypeCase.open(MissingGlyph.SHOW_CODE);
    assertEquals(
        type.width("ab[U+1FA9A]", Face.REGULAR, 10),
        type.width("ab\uD83E\uDE9A", Face.REGULAR, 10),
        1e-9);
    assertEquals("ab[U+1FA9A]", type.stretches("ab\uD83E\uDE9A", Face.REGULAR).get(0).text());
  }

  @Test
  void every_sign_the_product_prints_is_in_a_font() {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    String signs =
        "στδφλγψηεμρθαβχωΔΣΩΦ√≤≥≠≈·×±÷²³⁴⁻¹−–—½¼¾⅛⅜⅝⅞°µ→←↑↓′″∞∑∂∥⊥“”‘’…\u00a0\u2009\u202f\u2002";
    for (Face face : Face.values()) {
      assertTrue(type.width(signs, face, 10) > 0);
    }
  }
}
