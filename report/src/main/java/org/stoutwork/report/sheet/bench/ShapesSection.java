package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.stoutwork.report.figure.DiagramDrawing;
import org.stoutwork.report.figure.ShapeDrawing;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.Diagram;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Shape;
import org.stoutwork.result.StiffnessRange;

/** How the bench moves and what its parts feel, drawn. */
final class ShapesSection {

  private static final double SHAPE_HEIGHT = 44;
  private static final double DIAGRAM_HEIGHT = 34;

  private ShapesSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "Shapes and diagrams", "shapes"));
    out.addAll(racking(m));
    out.add(Heading.of(2, "Deflected shapes"));
    out.add(
        Paragraph.of(
            "Members as lines through their middles, joints at their mean stiffness: dashed before,"
                + " solid after, movements drawn larger by the factor in each caption."));
    out.addAll(shapes(m));
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
        + " pushes up what lies on the start's side of a cut, as in the workings. Distances run from the shoulder at the left"
        + " end of a stretcher, at the front end of a rail and at the foot of a leg.";
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
          folding(r, r.sway(), v -> bareMovement(m, v)),
          folding(r, r.amplification(), v -> bareFactor(v)));
    }
    return List.of(Heading.of(2, "Racking"), table.build());
  }

  /** Where the weight that leans is more than the frame can hold there is no sway to print. */
  private static String folding(Racking racking, StiffnessRange r, DoubleFunction<String> text) {
    StiffnessRange a = racking.amplification();
    if (a.largest() < Shown.MOST) {
      return three(r, text);
    }
    return (a.low() < Shown.MOST ? text.apply(r.low()) : "folds")
        + ", "
        + (a.mean() < Shown.MOST ? text.apply(r.mean()) : "folds")
        + ", "
        + (a.high() < Shown.MOST ? text.apply(r.high()) : "folds");
  }

  private static String bareMovement(Matter m, double mm) {
    String text = m.amounts().movement(mm);
    return text.substring(0, text.indexOf('\u00a0'));
  }

  private static String bareFactor(double value) {
    return org.stoutwork.quantity.Writing.number(value, 4);
  }

  private static String three(StiffnessRange r, DoubleFunction<String> text) {
    return Shown.plain(
        Shown.matters(r)
            ? text.apply(r.low()) + ", " + text.apply(r.mean()) + ", " + text.apply(r.high())
            : text.apply(r.mean()));
  }

  /** Shapes seen from the front or an end stand two in a row. */
  private static List<Block> shapes(Matter m) {
    List<Block> out = new ArrayList<>();
    List<Shape> upright = new ArrayList<>();
    for (Shape shape : m.result().shapes()) {
      if (ShapeDrawing.seenSquare(shape)) {
        upright.add(shape);
      } else {
        out.add(Figures.of(figure(m, shape, m.setup().columnWidth())));
      }
    }
    double half = m.setup().halfColumnWidth();
    for (int i = 0; i < upright.size(); i += 2) {
      Figures.Figure left = figure(m, upright.get(i), half);
      out.add(
          i + 1 < upright.size()
              ? Figures.of(left, figure(m, upright.get(i + 1), half))
              : Figures.of(left));
    }
    return out;
  }

  private static Figures.Figure figure(Matter m, Shape shape, double width) {
    ShapeDrawing.Drawn drawn =
        ShapeDrawing.draw(shape, m.amounts(), m.measure(), width, SHAPE_HEIGHT);
    String most = m.amounts().movement(shape.largest());
    String caption =
        "**%s**, seen %s, under: %s. Movements\u00a0×\u00a0%s; the largest anywhere is %s: %s"
            .formatted(
                m.say(shape.title()),
                drawn.seen(),
                m.say(shape.load()),
                drawn.factor(),
                Shown.plain(most),
                m.say(shape.largestAt()));
    String alternative =
        "Deflected shape, %s: largest movement %s, %s"
            .formatted(shape.title(), most, shape.largestAt());
    return Figures.Figure.of(drawn.drawing(), caption, alternative, "");
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
