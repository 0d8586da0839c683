package org.stoutwork.report.sheet.bench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads a printed sheet as a person would: its words, page by page, and its ink. */
record SheetText(List<String> pages, List<Integer> ink) {

  /** The words of every page, and how many of its pixels are dark below its running head. */
  static SheetText of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> pages = new ArrayList<>();
      List<Integer> ink = new ArrayList<>();
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(plain(stripper.getText(document)));
        ink.add(dark(renderer.renderImageWithDPI(page - 1, 36, ImageType.GRAY)));
      }
      return new SheetText(pages, ink);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int dark(BufferedImage image) {
    int count = 0;
    for (int y = image.getHeight() / 9; y < image.getHeight() * 8 / 9; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if ((image.getRGB(x, y) & 0xFF) < 200) {
          count++;
        }
      }
    }
    return count;
  }

  /**
   * Whether all words stand on one page, or on two in a row. The file keeps the lines of a table's
   * row in the order in which they are drawn, so that a cell's words may have others between them.
   */
  boolean says(String words) {
    String[] wanted = words.strip().split("[\\s\\u00a0\\u2002]+");
    for (int i = 0; i < pages.size(); i++) {
      String page = pages.get(i) + (i + 1 < pages.size() ? pages.get(i + 1) : "");
      if (Arrays.stream(wanted).allMatch(page::contains)) {
        return true;
      }
    }
    return false;
  }

  /** Signs without blanks: line breaks fall where they like. */
  static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0\\u2002]+", "");
  }
}
