package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.section.Layer;
import org.stoutwork.section.LayerBond;
import org.stoutwork.section.LayeredSection;
import org.stoutwork.source.Source;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Formula;

/**
 * Glue lines of the top: between layers glued on each other, and between boards glued edge to edge.
 * Forces are those of the strips of the top. Dog holes are taken out of an edge joint as though a
 * row ran along it; of the glue between layers they take a small part, that is left in.
 */
public final class TopGlueLines {

  /** Check of the top across the grain, and the one that stands for it where the top may split. */
  private static final String SPLIT = "bending-top-split";

  private static final String EDGES = "glue-line-edges";
  private static final String EDGES_TITLE = "Edge joints of the top";

  private static final GlueLineFinding.Shown MOMENT =
      new GlueLineFinding.Shown("M", "moment across the grain", Unit.N_MM);

  private static final Formula ACROSS =
      Formula.define("σ_90")
          .meaning("tension across an edge joint at the face of the top")
          .unit(Unit.MPA)
          .where("M", "moment across the grain", Unit.N_MM)
          .where("b", "length of joint that takes it, less dog holes", Unit.MM)
          .where("h", "thickness of the top", Unit.MM)
          .as("6*M/(b*h^2)")
          .source(Source.derived("beam theory"));

  private final Inquiry inquiry;
  private final Top top;

  private TopGlueLines(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.top = inquiry.bench().top();
  }

  /**
   * The checks of the lines that the top has.
   *
   * @param members checks of the members: where the top is let split, its edge joints may open too
   */
  public static List<CheckResult> all(Inquiry inquiry, List<CheckResult> members) {
    TopGlueLines lines = new TopGlueLines(inquiry);
    List<CheckResult> out = new ArrayList<>();
    if (lines.top.layers().size() > 1) {
      if (lines.top.hold() instanceof LayerHold.Glued) {
        for (Grain way : Grain.values()) {
          out.add(lines.faces(way));
        }
      }
    } else if (lines.solid()) {
      out.add(
          members.stream().anyMatch(m -> m.key().equals(SPLIT))
              ? new CheckResult.NotChecked(
                  EDGES,
                  EDGES_TITLE,
                  "top",
                  Topic.JOINT,
                  "the top is let split along the grain, beside a joint or in it; the strip under"
                      + " the load alone is checked in its place")
              : lines.edges());
    }
    return out;
  }

  private boolean solid() {
    String wood = top.layers().get(0).wood();
    return !(inquiry.bench().timbers().get(wood).wood() instanceof SheetGood);
  }

  /** What of the layers above a line pulls on it, for a width of 1 mm, and what it joins. */
  private record Face(int line, double first, List<GlueLineFinding.Side> sides) {

    String place() {
      List<String> woods = sides.stream().map(GlueLineFinding.Side::wood).distinct().toList();
      return "line %s from below, %s %s"
          .formatted(line, woods.size() > 1 ? "between" : "on", String.join(" and ", woods));
    }
  }

  private CheckResult faces(Grain way) {
    List<Layer> layers = new ArrayList<>();
    for (TopLayer layer : top.layers()) {
      FrameTimber timber = inquiry.timbers().get(layer.wood());
      double e = layer.grain() == way ? timber.e() : timber.eAcross();
      layers.add(new Layer(layer.thickness().mm(), e));
    }
    LayeredSection section = new LayeredSection(1, layers, new LayerBond.Glued());
    double stiffness = section.bendingStiffness(1);
    GlueLineFinding finding = new GlueLineFinding(inquiry);
    Face worst = null;
    double most = -1;
    for (int line = 1; line < layers.size(); line++) {
      List<GlueLineFinding.Side> sides =
          List.of(side(way, top.layers().get(line - 1)), side(way, top.layers().get(line)));
      double first = section.firstMoment(line);
      double use = first / Math.max(1e-9, finding.strength(sides, DurationClass.SHORT));
      if (use > most) {
        most = use;
        worst = new Face(line, first, sides);
      }
    }
    Face face = worst;
    StripForces forces = StripForces.shear(inquiry, way);
    GlueLineFinding.Line line =
        new GlueLineFinding.Line(
            "glue-line-layers-" + way.words(),
            "Glue line between layers, bent " + way.words() + " the bench",
            "top",
            face.place() + ", " + forces.place(),
            face.sides(),
            forces.leading(),
            List.of(GlueLineFinding.SHEAR));
    return finding.judged(
        line,
        result -> new double[] {forces.of(result)},
        (pad, f) ->
            Laminations.layers(pad, Math.abs(f[0]), face.first(), stiffness, forces.width()));
  }

  private static GlueLineFinding.Side side(Grain way, TopLayer beside) {
    boolean along = beside.grain() == way;
    return new GlueLineFinding.Side(
        beside.wood(), along ? DesignQuantity.SHEAR : DesignQuantity.ROLLING_SHEAR);
  }

  private CheckResult edges() {
    TopLayer layer = top.layers().get(0);
    Grain across = layer.grain() == Grain.ALONG ? Grain.ACROSS : Grain.ALONG;
    StripForces forces = StripForces.moment(inquiry, across);
    double h = layer.thickness().mm();
    double b = forces.width() * (1 - pierced());
    GlueLineFinding.Line line =
        new GlueLineFinding.Line(
            EDGES,
            EDGES_TITLE,
            "top",
            forces.place(),
            List.of(new GlueLineFinding.Side(layer.wood(), DesignQuantity.BENDING_ACROSS)),
            forces.leading(),
            List.of(MOMENT));
    return new GlueLineFinding(inquiry)
        .judged(
            line,
            result -> new double[] {forces.of(result)},
            (pad, f) -> pad.take(ACROSS, Math.abs(f[0]), b, h));
  }

  /** The greatest part of a joint's length that dog holes of one row take. */
  private double pierced() {
    return top.dogHoles().stream()
        .filter(row -> row.count() > 1)
        .mapToDouble(row -> row.size().mm() / row.spacing().mm())
        .max()
        .orElse(0);
  }
}
