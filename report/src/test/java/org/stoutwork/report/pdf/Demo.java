package org.stoutwork.report.pdf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Dash;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Fill;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.drawing.draughting.Dimensions;
import org.stoutwork.report.drawing.draughting.Leaders;
import org.stoutwork.report.drawing.draughting.Loads;
import org.stoutwork.report.drawing.draughting.ScaleBar;
import org.stoutwork.report.drawing.draughting.View;
import org.stoutwork.report.drawing.draughting.ViewTitle;
import org.stoutwork.report.sheet.About;
import org.stoutwork.report.sheet.Bars;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Revision;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.SignOff;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.report.sheet.Verdict;
import org.stoutwork.report.sheet.Worked;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** A sheet of invented content that uses every block at least once. */
final class Demo {

  static final Formula BENDING =
      Formula.define("σ_m")
          .meaning("bending stress at the outer fibre")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("b", "width", Unit.MM)
          .where("h", "depth", Unit.MM)
          .as("6*M/(b*h^2)")
          .source(Source.derived("beam theory: stress in a rectangle"));

  static final Formula GLUE =
      Formula.define("τ_{max}")
          .meaning("shear stress at the farthest corner of the glued cheeks")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("V", "shear force", Unit.N)
          .where("N", "pull", Unit.N)
          .where("a", "length of the cheek", Unit.MM)
          .where("b", "width of the cheek", Unit.MM)
          .where("J_p", "polar moment of the glued area", Unit.MM4)
          .where("n", "number of cheeks", Unit.ONE)
          .as("sqrt((M*b/(2*J_p) + N/(n*a*b))^2 + (M*a/(2*J_p) + V/(n*a*b))^2)")
          .source(Source.derived("elastic shear flow in a glued rectangle"));

  static final Formula DESIGN =
      Formula.define("f_{m,d}")
          .meaning("design strength in bending")
          .unit(Unit.MPA)
          .where("k_mod", "factor for duration and moisture", Unit.ONE)
          .where("f_{m,k}", "strength of which 5 in 100 pieces fall short", Unit.MPA)
          .where("γ_M", "partial factor of the material", Unit.ONE)
          .as("k_mod*f_{m,k}/γ_M")
          .source(Source.fromMemory("EN 1995-1-1:2004", "2.4.1, eq. (2.14)"));

  private Demo() {}

  static About about() {
    return new About(
        "Check sheet: demonstration bench",
        "Invented content for tests",
        "Stoutwork 0.1.0",
        "en-GB",
        Instant.parse("2026-03-14T09:26:53Z"),
        "7f3a 91c0");
  }

  static Furniture furniture() {
    return new Furniture(
        List.of(
            RichText.of("Workshop hall, north wall"),
            RichText.of("Bench 'Demonstration', revision B, 2026-03-14")),
        List.of(RichText.of("Stoutwork 0.1.0, SI units"), RichText.of("input 7f3a\u00a091c0")),
        RichText.of("Read with the cautions on page {page:cautions}"));
  }

  static Sheet sheet(Paper paper, TextMeasure measure) {
    PageSetup setup = PageSetup.usual(paper);
    List<Block> blocks = new ArrayList<>();
    blocks.add(Paragraph.title("Check sheet for a joined workbench"));
    blocks.add(
        Paragraph.lead(
            "The bench is **inadequate** as drawn: sideways planing turns the joints of the end"
                + " frames by more than they can take. Everything else holds."));
    blocks.add(SignOff.of("Prepared", "Checked (not by the preparer)", "Approved for class use"));
    blocks.add(
        Revision.table(List.of(new Revision("B", "2026-03-14", "Legs 60 to 70 mm", "", "")), 2));
    blocks.addAll(glance());
    blocks.addAll(members(setup, measure));
    blocks.addAll(workings());
    blocks.addAll(cautions());
    return new Sheet(about(), setup, furniture(), blocks);
  }

  private static List<Block> glance() {
    return List.of(
        Heading.of(1, "Result at a glance", "glance"),
        Paragraph.of(
            "Worst first. Utilisation is demand over capacity; the limit is 1.0. Where the"
                + " stiffness of a joint is a range, the thin line under the bar shows it and the"
                + " unfavourable end decides."),
        Bars.of(
            Bars.Bar.of(
                "Sway of the end frame", Utilisation.between(0.81, 1.27, Verdict.INADEQUATE)),
            Bars.Bar.of("Tipping to the front", Utilisation.of(0.94, Verdict.MARGINAL)),
            Bars.Bar.of(
                "Bending of the front stretcher with a long name that wraps",
                Utilisation.of(0.42, Verdict.ADEQUATE)),
            Bars.Bar.of("Withdrawal of the vise screws", Utilisation.notChecked()),
            Bars.Bar.of("Racking without glue", Utilisation.of(3.4, Verdict.INADEQUATE))),
        Table.of(
                Column.share(3, "Check"),
                Column.share(2, "Part"),
                Column.mm(19, "Demand").right(),
                Column.mm(19, "Capacity").right(),
                Column.mm(60, "Utilisation"),
                Column.mm(11, "Page").right())
            .caption("All checks, worst first; loads of combination 3 unless noted")
            .anchor("checks")
            .group("Joints")
            .row(
                List.of(
                    Cell.of("Moment in the joint, σ_c,90,d"),
                    Cell.of("rail to leg, left"),
                    Cell.of("412 N·m"),
                    Cell.of("324 N·m"),
                    Cell.of(Utilisation.between(0.81, 1.27, Verdict.INADEQUATE)),
                    Cell.of("{page:work}")))
            .row(
                List.of(
                    Cell.of("Shear at the shoulder"),
                    Cell.of("stretcher, front"),
                    Cell.of("1.31 kN"),
                    Cell.of("2.90 kN"),
                    Cell.of(Utilisation.of(0.452, Verdict.ADEQUATE)),
                    Cell.of("{page:work}")))
            .group("Stability")
            .row(
                List.of(
                    Cell.of("Tipping to the front"),
                    Cell.of("whole bench"),
                    Cell.of("301 N·m"),
                    Cell.of("320 N·m"),
                    Cell.of(Utilisation.of(0.941, Verdict.MARGINAL)),
                    Cell.of("{page:work}")))
            .row(
                List.of(
                    Cell.of("Vise screws pulled out"),
                    Cell.of("face vise"),
                    Cell.of("–"),
                    Cell.of("–"),
                    Cell.of(Utilisation.notChecked()),
                    Cell.of("–")))
            .build());
  }

  private static List<Block> members(PageSetup setup, TextMeasure measure) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Heading.of(1, "Geometry and members", "geometry"));
    blocks.add(
        Paragraph.of(
            "Dimensions are finished sizes at 12\u00a0% moisture. //Names in sloping type// are those"
                + " of the drawing in figure {figure:front}; E_0.05 and k_{def} are explained in"
                + " section {section:work}."));
    blocks.add(
        Figures.of(
            Figures.Figure.of(
                elevation(setup.columnWidth(), measure),
                "Front view with overall sizes and the planing load of combination 3",
                "Front view of the bench: 1600 mm long, 870 mm high, planing load 200 N at the top",
                "front")));
    blocks.add(
        Figures.of(
            Figures.Figure.of(
                moment(setup.halfColumnWidth()),
                "Moment, drawn on the tension side",
                "Moment diagram: peak 0.73 kN·m at mid-span",
                ""),
            Figures.Figure.of(
                spread(setup.halfColumnWidth()),
                "Load of the second model, spread over the top between the two end frames",
                "Spread load of 1.2 kN/m on a line with a moment of 45 N·m at its right end",
                "")));
    Table.Builder table =
        Table.of(
                Column.mm(24, "Member"),
                Column.share(2, "Wood and grade basis"),
                Column.mm(17, "b, mm").right(),
                Column.mm(17, "h, mm").right(),
                Column.mm(20, "E_mean, GPa").right(),
                Column.share(3, "Source and mark"))
            .caption("Members");
    for (int i = 1; i <= 26; i++) {
      table.row(
          "leg " + i,
          i % 3 == 0
              ? "European ash, clear wood"
              : "beech, graded by eye on site, slope below 1 in 12",
          Integer.toString(60 + i),
          Integer.toString(90 + i),
          "12.4",
          "Handbook of woods, 2010 edition, table 5-3 (published)");
    }
    blocks.add(table.build());
    return blocks;
  }

  private static List<Block> workings() {
    RecordingPad pad = Pad.recording();
    double m =
        pad.given(
            "M",
            "moment in the stretcher, from the frame analysis",
            412_300,
            Unit.N_MM,
            Source.derived("analysis, station 4, planing"));
    pad.take(BENDING, m, 38, 92);
    pad.take(DESIGN, 0.9, 30, 1.3);
    pad.remark("The moment is taken at the shoulder, not at the axis of the leg.");
    pad.take(GLUE, 412_300, 1310, -215, 71, 88, 2.34e7, 2);
    return List.of(
        Heading.of(1, "Workings", "work"),
        Heading.of(2, "Bending of the front stretcher"),
        Paragraph.of(
            "**Checked:** outer fibre at mid-span of //stretcher-front//, combination 3. Results are"
                + " rounded for printing and carried in full."),
        Worked.of(pad.working()),
        Heading.of(3, "Comparison"),
        Bullets.of(
            "Hand formula and frame model differ by 3.1\u00a0%; the lower of both stiffnesses is used"
                + " for the verdict, which makes the figure safe whatever the fit of the joint.",
            "Units in this section: mm^2, N·mm, s^{-1}, 10^-6; ½ × ¾ ± ÷ ≤ ≥ ≠ ≈ √ Δ Σ φ λ ψ η µ → ⅜ ′ ″ ∥ ⊥."));
  }

  private static List<Block> cautions() {
    return List.of(
        Heading.of(1, "Cautions", "cautions"),
        Caution.of(Caution.Grade.NOTICE, "Moisture", "Store the top flat until it has settled."),
        Caution.of(
            Caution.Grade.CAUTION,
            "Pinching",
            "Keep fingers out of the gap when the leg vise closes."),
        Caution.of(
            Caution.Grade.WARNING,
            "Tipping",
            "Fix the bench to the floor before a pupil planes across it. Loads from the side are"
                + " the ones that tip it.",
            "Check the fixings at the beginning of each term."),
        Caution.of(
            Caution.Grade.DANGER,
            "Standing on the top",
            "Nobody may stand on the bench: it has not been checked for that."));
  }

  static Drawing elevation(double width, TextMeasure measure) {
    double height = 94;
    View view = View.fitting(new View.RealBox(0, 0, 1600, 870), new Bounds(20, 22, width - 20, 74));
    Sketch s = new Sketch();
    Point a = view.at(0, 870);
    Point b = view.at(1600, 780);
    s.rectangle(a, b, Fill.hatch(20, 1.6), Stroke.THICK);
    for (double x : new double[] {200, 1310}) {
      s.rectangle(view.at(x, 780), view.at(x + 90, 0), Fill.of(Ink.WHITE), Stroke.THICK);
    }
    s.rectangle(view.at(290, 260), view.at(1310, 170), Fill.of(Ink.MIST), Stroke.MEDIUM);
    s.line(view.at(800, 930), view.at(800, -60), Stroke.THIN.dashed(Dash.CHAIN));
    s.line(view.at(-60, 0), view.at(1660, 0), Stroke.MEDIUM);
    Dimensions dims = new Dimensions(measure, 9);
    s.add(dims.horizontal(view.at(0, 0), view.at(1600, 0), height - 12, "1600"));
    s.add(dims.horizontal(view.at(200, 0), view.at(290, 0), height - 18, "90"));
    s.add(dims.vertical(view.at(0, 0), view.at(0, 870), view.at(0, 0).x() - 9, "870"));
    s.add(dims.vertical(view.at(1600, 780), view.at(1600, 870), view.at(1600, 0).x() + 30, "90"));
    s.add(Loads.force(view.at(1600, 840).plus(2, 0), 180, 13, "200 N", 9));
    s.add(Loads.force(view.at(420, 870), -90, 11, "1.0 kN", 9));
    s.add(Leaders.dotted(view.at(400, 215), view.at(430, 520), "stretcher-front, 38 × 92", 9));
    s.add(Leaders.pointed(view.at(1400, 500), view.at(1460, 620), "leg-3", 9));
    s.add(ViewTitle.at(new Point(2, 6), "Front", view.scale(), 10, measure));
    s.add(ScaleBar.at(new Point(width - 35, 2), view, 100, 4, "mm", 8));
    return s.drawing(width, height).requireInside(measure);
  }

  private static Drawing moment(double width) {
    Sketch s = new Sketch();
    Point left = new Point(6, 16);
    Point right = new Point(width - 6, 16);
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i <= 24; i++) {
      double t = i / 24.0;
      curve.add(left.towards(right, t).plus(0, 60 * t * (1 - t)));
    }
    s.area(curve, new Fill.Hatch(90, 1.5, Stroke.of(0.13, Ink.MID)));
    s.path(curve, Stroke.of(0.45, Ink.ACCENT));
    s.line(left, right, Stroke.MEDIUM);
    s.text(left.towards(right, 0.5).plus(0, 20), "0.73 kN·m", Align.CENTRE);
    s.text(left.plus(0, -2), "0", Align.CENTRE);
    s.text(right.plus(0, -2), "0", Align.CENTRE);
    return s.drawing(width, 40);
  }

  private static Drawing spread(double width) {
    Sketch s = new Sketch();
    s.line(new Point(4, 24), new Point(width - 20, 24), Stroke.THICK);
    s.add(Loads.spread(new Point(4, 23.6), new Point(width - 20, 23.6), 9, "1.2 kN/m", 9));
    s.add(Loads.moment(new Point(width - 20, 24), 4, true, "45 N·m", 9));
    s.arc(new Point(12, 24), 6, 180, 180, Stroke.THIN);
    return s.drawing(width, 34);
  }
}
