package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.figure.BenchViews;
import org.stoutwork.report.figure.PartList;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Table;

/** The bench to scale and the list of its parts, on one page. */
final class DrawingSection {

  /** Height of heading, remark and caption, mm. */
  private static final double AROUND = 44;

  private static final double ROW = 4.6;

  /** Width of the columns of the list that hold no words, with the gaps, mm. */
  private static final double FIXED = 9 + 13 + 46 + 4 * 3.4;

  private static final double LEAST = 110;

  private DrawingSection() {}

  static List<Block> of(Matter m) {
    Table list = list(m);
    double room = m.setup().columnHeight() - AROUND - ROW * (lines(m) + 2.5);
    double height = Math.max(LEAST, room);
    Drawing drawing =
        BenchViews.draw(
            m.bench(), m.parts(), m.amounts(), m.measure(), m.setup().columnWidth(), height);
    String caption =
        "The bench as it was checked; dimensions in "
            + (m.si() ? "millimetres" : "inches")
            + ". Hidden parts are dashed in the plan; chain lines stand for vises and machines, of"
            + " which only place and reach are known.";
    return List.of(
        new Block.PageBreak(),
        Heading.of(1, "Drawing and list of parts", "drawing"),
        Figures.of(Figures.Figure.of(drawing, caption, alternative(m), "views")),
        list);
  }

  /** Lines of the list of parts, as far as the widths of its two columns of words tell. */
  private static double lines(Matter m) {
    double free = m.setup().columnWidth() - FIXED;
    double lines = 0;
    for (PartList.Line line : m.parts().lines()) {
      double name = width(m, m.say(line.name())) / (free * 3 / 5.2);
      double wood = line.wood().isEmpty() ? 0 : width(m, wood(m, line.wood())) / (free * 2.2 / 5.2);
      lines += Math.max(1, Math.ceil(Math.max(name, wood) * 1.06));
    }
    return lines;
  }

  private static double width(Matter m, String markup) {
    return m.measure().width(RichText.of(markup), 9);
  }

  private static String alternative(Matter m) {
    return "Front view, end view and plan of the bench: %s long, %s wide, %s high, %s end frames"
        .formatted(
            m.amounts().length(m.bench().top().length().mm()),
            m.amounts().length(m.bench().top().width().mm()),
            m.amounts().length(m.bench().height().mm()),
            m.bench().endFrames().size());
  }

  private static Table list(Matter m) {
    Table.Builder table =
        Table.of(
                Column.mm(9, ""),
                Column.share(3, "Part"),
                Column.mm(13, "Number").right(),
                Column.mm(46, "Section × length, " + m.amounts().lengthUnit()).right(),
                Column.share(2.2, "Wood"))
            .caption("Parts by the letters of the drawing; lengths from shoulder to shoulder")
            .anchor("parts")
            .dense();
    for (PartList.Line line : m.parts().lines()) {
      table.row(
          "**" + line.mark() + "**",
          m.say(line.name()),
          Integer.toString(line.count()),
          size(m, line.sizes()),
          line.wood().isEmpty() ? "\u2013" : wood(m, line.wood()));
    }
    return table.build();
  }

  private static String wood(Matter m, String key) {
    return m.result().materials().stream()
        .filter(material -> material.key().equals(key))
        .map(material -> Shown.plain(material.name()))
        .findFirst()
        .orElse(Shown.plain(key));
  }

  private static String size(Matter m, List<Double> sizes) {
    List<String> out = new ArrayList<>();
    sizes.forEach(mm -> out.add(m.amounts().bareLength(mm)));
    return out.isEmpty() ? "\u2013" : Shown.plain(String.join("\u00a0×\u00a0", out));
  }
}
