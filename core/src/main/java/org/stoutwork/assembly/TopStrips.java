package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.section.Layer;
import org.stoutwork.section.LayerBond;
import org.stoutwork.section.LayeredSection;
import org.stoutwork.section.Rectangle;

/**
 * The top as a grillage: strips along the bench with the stiffness of the grain's direction, strips
 * across it with that of the other, each with half of the slab's resistance to twisting.
 *
 * <p>In its own plane a slab is far stiffer than the frame, but a net of strips is not; so each
 * strip gets the second moment of the whole top for bending in that plane.
 */
final class TopStrips {

  static final String ALONG = "top strip along";
  static final String ACROSS = "top strip across";

  private final Bench bench;
  private final Function<String, FrameTimber> timbers;
  private final TopGrid grid;
  private final TopHoles holes;
  private final double thickness;

  TopStrips(Bench bench, Function<String, FrameTimber> timbers, TopGrid grid) {
    this.bench = bench;
    this.timbers = timbers;
    this.grid = grid;
    this.holes = new TopHoles(bench, grid);
    this.thickness = bench.top().thicknessMm();
  }

  /** Height of the strips' axes: the middle of the top. */
  double height() {
    return bench.height().mm() - thickness / 2;
  }

  static String node(int line, int station) {
    return "top " + (line + 1) + "." + (station + 1);
  }

  /** Adds nodes, strips and their sections; returns the pieces of each line along the bench. */
  List<Part> build(FrameModelBuilder model) {
    for (int i = 0; i < grid.lines().size(); i++) {
      for (int k = 0; k < grid.stations().size(); k++) {
        model.node(node(i, k), grid.stations().get(k), grid.lines().get(i), height());
      }
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < grid.lines().size(); i++) {
      parts.add(lineAlong(model, i));
    }
    for (int k = 0; k < grid.stations().size(); k++) {
      parts.add(lineAcross(model, k));
    }
    return parts;
  }

  private Part lineAlong(FrameModelBuilder model, int line) {
    String name = ALONG + " " + (line + 1);
    double share = grid.share(line);
    double mass = topMass() * share / grid.width();
    strip(model, name, share, Grain.ALONG, holes.leftAlong(line), mass);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k + 1 < grid.stations().size(); k++) {
      String member = name + ", length " + (k + 1);
      model.member(member, node(line, k), node(line, k + 1), name, name);
      double from = grid.stations().get(k) - grid.stations().get(0);
      pieces.add(new Piece(member, from, new Rectangle(share, thickness)));
    }
    return new Part(
        name, PartKind.TOP, wood(), pieces, holes.alongCuts(line), reach(grid.stations()));
  }

  private Part lineAcross(FrameModelBuilder model, int station) {
    String name = ACROSS + " " + (station + 1);
    double reach = grid.reach(station);
    strip(model, name, reach, Grain.ACROSS, holes.leftAcross(station), 0);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < grid.lines().size(); i++) {
      String member = name + ", length " + (i + 1);
      model.member(member, node(i, station), node(i + 1, station), name, name);
      double from = grid.lines().get(i) - grid.lines().get(0);
      pieces.add(new Piece(member, from, new Rectangle(reach, thickness)));
    }
    return new Part(
        name, PartKind.TOP, wood(), pieces, holes.acrossCuts(station), reach(grid.lines()));
  }

  private String wood() {
    return bench.top().layers().get(0).wood();
  }

  private static double reach(List<Double> places) {
    return places.get(places.size() - 1) - places.get(0);
  }

  private double span() {
    double longest = 0;
    for (int i = 1; i < bench.endFrames().size(); i++) {
      longest =
          Math.max(
              longest, bench.endFrames().get(i).at().mm() - bench.endFrames().get(i - 1).at().mm());
    }
    return longest;
  }

  private void strip(
      FrameModelBuilder model, String name, double b, Grain way, double left, double mass) {
    double span = way == Grain.ALONG ? span() : reach(grid.lines());
    double e = left * modulus(b, way, span);
    double twisting = shearInPlane();
    Rectangle r = new Rectangle(b, thickness);
    double area = axial(b, way) / e;
    double whole = way == Grain.ALONG ? grid.width() : grid.length();
    double inPlane = new Rectangle(thickness, whole).secondMoment();
    double torsion = b * Math.pow(thickness, 3) / 6;
    double transverse = r.shearArea() * shearOf(way) / twisting;
    model.section(
        name,
        new CrossSection(area, r.secondMoment(), inPlane, torsion, r.shearArea(), transverse));
    double length = way == Grain.ALONG ? reach(grid.stations()) : reach(grid.lines());
    model.material(name, e, twisting, mass / (area * length) * 1e9);
  }

  /** Modulus with which a solid strip of the top's thickness bends as its layers do. */
  double modulus(double b, Grain way, double span) {
    List<Layer> layers =
        bench.top().layers().stream()
            .map(layer -> new Layer(layer.thickness().mm(), modulusOf(layer, way)))
            .toList();
    double stiffness = new LayeredSection(b, layers, bond(b)).bendingStiffness(span);
    return stiffness / new Rectangle(b, thickness).secondMoment();
  }

  private double modulusOf(TopLayer layer, Grain way) {
    FrameTimber timber = timbers.apply(layer.wood());
    return layer.grain() == way ? timber.e() : timber.eAcross();
  }

  private double axial(double b, Grain way) {
    return bench.top().layers().stream()
        .mapToDouble(layer -> modulusOf(layer, way) * layer.thickness().mm() * b)
        .sum();
  }

  private double shearInPlane() {
    return mean(layer -> timbers.apply(layer.wood()).g());
  }

  private double shearOf(Grain way) {
    return mean(
        layer -> {
          FrameTimber timber = timbers.apply(layer.wood());
          return layer.grain() == way ? timber.g() : timber.gAcross();
        });
  }

  /** Mean over the thickness. */
  private double mean(ToDoubleFunction<TopLayer> value) {
    return bench.top().layers().stream()
            .mapToDouble(layer -> value.applyAsDouble(layer) * layer.thickness().mm())
            .sum()
        / thickness;
  }

  private LayerBond bond(double b) {
    LayerHold hold = bench.top().hold();
    if (hold instanceof LayerHold.Screwed screwed) {
      double rows = screwed.rows() * b / grid.width();
      TopLayer lower = bench.top().layers().get(0);
      TopLayer upper = bench.top().layers().get(1);
      double slip =
          Slip.ofScrew(
              screwed.diameter().mm(),
              timbers.apply(lower.wood()).density(),
              timbers.apply(upper.wood()).density());
      return new LayerBond.Screwed(slip * rows, screwed.spacing().mm(), 1);
    }
    return hold instanceof LayerHold.Loose ? new LayerBond.Loose() : new LayerBond.Glued();
  }

  private double topMass() {
    return Masses.topKg(bench, timbers);
  }
}
