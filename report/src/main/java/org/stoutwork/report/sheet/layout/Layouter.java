package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.page.Bookmark;
import org.stoutwork.report.sheet.page.Page;
import org.stoutwork.report.sheet.page.PagedSheet;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Tag;

/**
 * Sets a sheet on pages. References to pages are settled by setting the sheet again until nothing
 * moves. The result is checked: nothing leaves the printable area and no two lines of text overlap.
 *
 * <p>Same sheet and same measure, same pages.
 */
public final class Layouter {

  private static final int PASSES = 8;

  private final TextMeasure measure;

  /** Sets in the type that the measure knows. */
  public Layouter(TextMeasure measure) {
    this.measure = measure;
  }

  /**
   * The pages of a sheet.
   *
   * @throws LayoutFault if something does not fit, or text refers to a name that no place has
   */
  public PagedSheet layOut(Sheet sheet) {
    Map<String, String> known = Map.of();
    for (int pass = 0; pass < PASSES; pass++) {
      Numbering numbering = new Numbering(known);
      Set<String> asked = new TreeSet<>();
      PagedSheet pages = pass(sheet, numbering, asked);
      if (numbering.found().equals(known)) {
        requireKnown(asked, known);
        PageProof.require(pages, sheet.setup(), measure);
        return pages;
      }
      known = Map.copyOf(numbering.found());
    }
    throw new LayoutFault(
        String.format(
            Locale.ROOT,
            "page numbers keep moving after %d settings; put a page break before a reference",
            PASSES));
  }

  private PagedSheet pass(Sheet sheet, Numbering numbering, Set<String> asked) {
    TagTree tags = new TagTree();
    Bounds column = sheet.setup().column();
    Setting setting =
        new Setting(column.width(), column.height(), measure, Tag.ROOT, tags, numbering, asked);
    List<Band> bands = new Setter(setting).set(sheet.blocks());
    List<List<Paginator.PlacedBand>> placed = Paginator.pages(bands, column.height());
    List<Bookmark> outline = new ArrayList<>();
    List<List<Piece>> bodies = new ArrayList<>();
    for (List<Paginator.PlacedBand> page : placed) {
      bodies.add(body(page, column, bodies.size() + 1, numbering, outline));
    }
    numbering.pages(bodies.size());
    Furnishing furnishing = new Furnishing(sheet.setup(), sheet.furniture(), measure, numbering);
    List<Page> pages = new ArrayList<>();
    for (List<Piece> body : bodies) {
      int number = pages.size() + 1;
      List<Piece> all = new ArrayList<>(body);
      all.add(furnishing.of(number, bodies.size()));
      pages.add(new Page(number, all));
    }
    return new PagedSheet(sheet.about(), sheet.setup().paper(), pages, tags.tags(), outline);
  }

  private static List<Piece> body(
      List<Paginator.PlacedBand> page,
      Bounds column,
      int number,
      Numbering numbering,
      List<Bookmark> outline) {
    List<Piece> pieces = new ArrayList<>();
    for (Paginator.PlacedBand placed : page) {
      double top = column.top() + placed.top();
      placed.band().pieces().forEach(p -> pieces.add(p.moved(column.left(), top)));
      placed.band().anchors().forEach(name -> numbering.page(name, number));
      placed
          .band()
          .outline()
          .ifPresent(e -> outline.add(new Bookmark(e.level(), e.text(), number, top)));
    }
    return pieces;
  }

  private static void requireKnown(Set<String> asked, Map<String, String> known) {
    for (String name : asked) {
      if (!known.containsKey(name)) {
        throw new LayoutFault(
            String.format(
                Locale.ROOT,
                "text refers to {%s}, which no place is called; known names are %s",
                name,
                new TreeSet<>(known.keySet())));
      }
    }
  }
}
