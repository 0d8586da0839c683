package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Tag;

/** Prints the running head and foot. Texts that would meet are refused rather than overprinted. */
final class Furnishing {

  private static final Type TYPE = Type.RUNNING;
  private static final double APART = 4;

  private final PageSetup setup;
  private final Furniture furniture;
  private final TextMeasure measure;
  private final Numbering numbering;

  Furnishing(PageSetup setup, Furniture furniture, TextMeasure measure, Numbering numbering) {
    this.setup = setup;
    this.furniture = furniture;
    this.measure = measure;
    this.numbering = numbering;
  }

  /** Head and foot of a page, as decoration. */
  Piece of(int page, int pages) {
    Bounds all = setup.printable();
    List<Mark> marks = new ArrayList<>();
    head(page, pages, all, marks);
    double rule = all.bottom() - TYPE.leading() - 1.2;
    marks.add(level(all, rule, Stroke.of(0.2, Ink.BLACK)));
    double foot = all.bottom() - TYPE.leading() + TYPE.baseline();
    RichText count = RichText.plain("Page " + page + " of " + pages);
    pair(resolved(furniture.footLeft(), page, pages), count, all, foot, marks);
    return new Piece(Tag.NONE, marks);
  }

  private void head(int page, int pages, Bounds all, List<Mark> marks) {
    int lines = Math.max(furniture.headLeft().size(), furniture.headRight().size());
    for (int i = 0; i < lines; i++) {
      RichText left = resolved(line(furniture.headLeft(), i), page, pages);
      RichText right = resolved(line(furniture.headRight(), i), page, pages);
      pair(left, right, all, all.top() + i * TYPE.leading() + TYPE.baseline(), marks);
    }
    double rule = all.top() + lines * TYPE.leading() + 1;
    marks.add(level(all, rule, Stroke.of(0.2, Ink.BLACK)));
  }

  private static RichText line(List<RichText> lines, int i) {
    return i < lines.size() ? lines.get(i) : RichText.EMPTY;
  }

  private void pair(RichText left, RichText right, Bounds all, double base, List<Mark> marks) {
    double wide = measure.width(left, TYPE.points()) + measure.width(right, TYPE.points());
    if (wide + APART > all.width()) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "running texts \"%s\" and \"%s\" are %.1f mm long together; the page has %.1f mm; shorten one",
              left.characters(),
              right.characters(),
              wide,
              all.width() - APART));
    }
    put(left, all.left(), base, Align.LEFT, marks);
    put(right, all.right(), base, Align.RIGHT, marks);
  }

  private static void put(RichText text, double x, double base, Align align, List<Mark> marks) {
    if (!text.isEmpty()) {
      marks.add(new Mark.Label(new Point(x, base), text, TYPE.points(), align, 0, Ink.DARK));
    }
  }

  private static Mark level(Bounds all, double y, Stroke stroke) {
    return new Mark.Path(List.of(new Point(all.left(), y), new Point(all.right(), y)), stroke);
  }

  private RichText resolved(RichText text, int page, int pages) {
    return text.resolved(
        name ->
            name.equals("page")
                ? Integer.toString(page)
                : name.equals("pages") ? Integer.toString(pages) : numbering.resolve(name));
  }
}
