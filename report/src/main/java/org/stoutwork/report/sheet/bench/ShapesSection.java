package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stoutwork.report.figure.DiagramDrawing;
import org.stoutwork.report.figure.ShapeDrawing;
import org.stoutwork.report.sheet.Bars;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Diagram;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Shape;
import org.stoutwork.result.StiffnessRange;

/** How the bench moves and what its parts feel, drawn. */
final class ShapesSection {

  private static final int MOST_BARS = 12;
  private static final double SHAPE_HEIGHT = 62;
  private static final double DIAGRAM_HEIGHT = 46;

  private ShapesSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(new Block.PageBreak());
    out.add(Heading.of(1, "Shapes and diagrams", "shapes"));
    out.addAll(overview(m));
    out.addAll(racking(m));
    out.add(Heading.of(2, "Deflected shapes"));
    out.add(
        Paragraph.of(
            "Members as lines through their middles, joints at their mean stiffness: dashed before,"
                + " solid after, movements drawn larger by the factor in each caption."));
    m.result().shapes().forEach(s -> out.add(shape(m, s)));
    if (!m.result().diagrams().isEmpty()) {
      out.add(Heading.of(2, "Moment and shear of the parts that are bent most"));
      out.add(Paragraph.of(convention()));
      m.result().diagrams().forEach(d -> out.add(diagram(m, d)));
    }
    return out;
  }

  private static String convention() {
    return "Joints at their mean stiffness, factors of the strength combination put in. A moment is"
        + " positive where it pulls the lower side of a level part, and is drawn on the side that it"
        + " pulls: below the line if positive. Shear is positive, and drawn above the line, where it"
        + " pushes up what lies to the left of a cut. Distances run from the shoulder at the left"
        + " end of a stretcher, at the front end of a rail and at the foot of a leg.";
  }

  private static List<Block> overview(Matter m) {
    List<Bars.Bar> bars = new ArrayList<>();
    m.result().checked().stream()
        .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
        .limit(MOST_BARS)
        .forEach(
            c ->
                bars.add(
                    Bars.Bar.of("**" + m.say(c.title()) + "**, " + m.say(c.part()), Shown.bar(c))));
    if (bars.isEmpty()) {
      return List.of();
    }
    return List.of(Heading.of(2, "The checks that use most"), new Bars(bars));
  }

  private static List<Block> racking(Matter m) {
    if (m.result().racking().isEmpty()) {
      return List.of();
    }
    Table.Builder table =
        Table.of(
                Column.share(1.5, "Way"),
                Column.mm(20, "Thrust").right(),
                Column.share(2, "Stiffness, " + m.amounts().swayStiffnessUnit()).right(),
                Column.share(2.4, "Sway, " + m.amounts().lengthUnit()).right(),
                Column.share(1.6, "Amplified by").right())
            .caption(
                "Racking at the height of the top with soft, mean and stiff joints; sway includes"
                    + " the weight that leans along, whose share is the last column")
            .anchor("racking");
    for (Racking r : m.result().racking()) {
      table.row(
          Shown.sentence(r.way().words()),
          Shown.plain(m.amounts().force(r.force())),
          three(r.stiffness(), v -> m.amounts().bareSwayStiffness(v)),
          three(r.sway(), v -> bareMovement(m, v)),
          three(r.amplification(), v -> bareFactor(v)));
    }
    return List.of(Heading.of(2, "Racking"), table.build());
  }

  private static String bareMovement(Matter m, double mm) {
    String text = m.amounts().movement(mm);
    return text.substring(0, text.indexOf('\u00a0'));
  }

  private static String bareFactor(double value) {
    return org.stoutwork.quantity.Writing.number(value, 4);
  }

  private static String three(StiffnessRange r, java.util.function.DoubleFunction<String> text) {
    return Shown.plain(
        Shown.matters(r)
            ? text.apply(r.low()) + ", " + text.apply(r.mean()) + ", " + text.apply(r.high())
            : text.apply(r.mean()));
  }

  private static Block shape(Matter m, Shape shape) {
    ShapeDrawing.Drawn drawn =
        ShapeDrawing.draw(shape, m.amounts(), m.measure(), m.setup().columnWidth(), SHAPE_HEIGHT);
    String most = m.amounts().movement(shape.largest());
    String caption =
        "**%s**, under: %s. Movements × %s; the largest is %s: %s"
            .formatted(
                m.say(shape.title()),
                m.say(shape.load()),
                drawn.factor(),
                Shown.plain(most),
                m.say(shape.largestAt()));
    String alternative =
        "Deflected shape, %s: largest movement %s, %s"
            .formatted(shape.title(), most, shape.largestAt());
    return Figures.of(Figures.Figure.of(drawn.drawing(), caption, alternative, ""));
  }

  private static Block diagram(Matter m, Diagram diagram) {
    double width = m.setup().halfColumnWidth();
    DiagramDrawing drawing =
        new DiagramDrawing(diagram, m.amounts(), m.measure(), width, DIAGRAM_HEIGHT);
    String under = ", under: " + m.say(diagram.load());
    return Figures.of(
        Figures.Figure.of(
            drawing.moment(),
            "**Moment**, " + m.say(diagram.title()) + under,
            "Moment along " + diagram.title() + ": " + drawing.momentPeak(),
            ""),
        Figures.Figure.of(
            drawing.shear(),
            "**Shear**, " + m.say(diagram.title()) + ", same load",
            "Shear along " + diagram.title() + ": " + drawing.shearPeak(),
            ""));
  }
}
