package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelSection;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.section.Layer;
import org.stoutwork.section.LayerBond;
import org.stoutwork.section.LayeredSection;
import org.stoutwork.wood.direction.PlateModuli;

/**
 * What the top resists as a plate, per unit of its width, from its layers.
 *
 * <p>Bending in each direction is that of {@link LayeredSection} with the plane-strain moduli of
 * the layers, about the neutral surface of that direction. Twisting and the coupling of both
 * bendings lie between those of loose and of glued layers, as far up as bending does.
 */
final class TopSection {

  private final Bench bench;
  private final Function<String, FrameTimber> timbers;
  private final List<Ply> plies;

  /** One layer turned into the directions of the top, with its plane-stress stiffness, MPa. */
  private record Ply(double t, PanelMaterial m) {

    double q11() {
      return m.e1() / (1 - m.nu12() * m.nu21());
    }

    double q22() {
      return m.e2() / (1 - m.nu12() * m.nu21());
    }

    double q12() {
      return m.nu12() * q22();
    }

    double own() {
      return t * t * t / 12;
    }
  }

  TopSection(Bench bench, Function<String, FrameTimber> timbers) {
    this.bench = bench;
    this.timbers = timbers;
    this.plies = bench.top().layers().stream().map(this::ply).toList();
  }

  private Ply ply(TopLayer layer) {
    FrameTimber timber = timbers.apply(layer.wood());
    PlateModuli p = timber.plate();
    PanelMaterial along =
        new PanelMaterial(p.e1(), p.e2(), p.g12(), p.g13(), p.g23(), p.nu12(), timber.density());
    return new Ply(layer.thickness().mm(), layer.grain() == Grain.ALONG ? along : along.turned());
  }

  PanelSection section() {
    return plies.size() == 1 ? PanelSection.solid(plies.get(0).m(), plies.get(0).t()) : layered();
  }

  private PanelSection layered() {
    Way along = new Way(Ply::q11, p -> p.m().g13());
    Way across = new Way(Ply::q22, p -> p.m().g23());
    Way twist = new Way(p -> p.m().g12(), p -> 1);
    double d11 = along.bending(bond(true), bench.top().width().mm(), Layout.longestBay(bench));
    double d22 = across.bending(bond(false), bench.top().length().mm(), bench.top().width().mm());
    double c1 = along.together(d11);
    double c2 = across.together(d22);
    double d66 = twist.own() + Math.min(c1, c2) * (twist.glued() - twist.own());
    double loose12 = sum(p -> p.q12() * p.own());
    double d12 = loose12 + Math.sqrt(c1 * c2) * offset(along, across);
    boolean glued = bench.top().hold() instanceof LayerHold.Glued;
    return new PanelSection(
        d11,
        d12,
        d22,
        d66,
        glued ? across.gluedShear() : across.looseShear(),
        glued ? along.gluedShear() : along.looseShear(),
        sum(p -> p.q11() * p.t()),
        sum(p -> p.q12() * p.t()),
        sum(p -> p.q22() * p.t()),
        sum(p -> p.m().g12() * p.t()),
        sum(p -> p.m().density() * p.t()) / 1000);
  }

  private double sum(ToDoubleFunction<Ply> value) {
    return plies.stream().mapToDouble(value).sum();
  }

  /** Σ Q12 t z1 z2 of glued layers, each z from the neutral surface of its own direction. */
  private double offset(Way along, Way across) {
    double below = 0;
    double sum = 0;
    for (Ply ply : plies) {
      double middle = below + ply.t() / 2;
      sum += ply.q12() * ply.t() * (middle - along.axis()) * (middle - across.axis());
      below += ply.t();
    }
    return sum;
  }

  /**
   * The hold of the layers as {@link LayeredSection} sees it over the whole width (bending along)
   * or the whole length (bending across).
   */
  private LayerBond bond(boolean along) {
    LayerHold hold = bench.top().hold();
    if (hold instanceof LayerHold.Screwed screwed) {
      double slip =
          Slip.ofScrew(
              screwed.diameter().mm(), plies.get(0).m().density(), plies.get(1).m().density());
      double width = bench.top().width().mm();
      double length = bench.top().length().mm();
      return along
          ? new LayerBond.Screwed(slip * screwed.rows(), screwed.spacing().mm(), 1)
          : new LayerBond.Screwed(
              slip * length / screwed.spacing().mm(), width / screwed.rows(), 1);
    }
    return hold instanceof LayerHold.Loose ? new LayerBond.Loose() : new LayerBond.Glued();
  }

  /** The layers seen in one direction: their modulus and their transverse shear modulus. */
  private final class Way {
    private final ToDoubleFunction<Ply> modulus;
    private final ToDoubleFunction<Ply> shear;

    Way(ToDoubleFunction<Ply> modulus, ToDoubleFunction<Ply> shear) {
      this.modulus = modulus;
      this.shear = shear;
    }

    private LayeredSection stack(LayerBond bond, double b) {
      List<Layer> layers = new ArrayList<>();
      plies.forEach(p -> layers.add(new Layer(p.t(), modulus.applyAsDouble(p))));
      return new LayeredSection(b, layers, bond);
    }

    double bending(LayerBond bond, double b, double span) {
      return stack(bond, b).bendingStiffness(span) / b;
    }

    double own() {
      return bending(new LayerBond.Loose(), 1, 1);
    }

    double glued() {
      return bending(new LayerBond.Glued(), 1, 1);
    }

    double axis() {
      return stack(new LayerBond.Glued(), 1).neutralAxis();
    }

    /** How far a bending stiffness has come from loose (0) to glued (1); rounding may overshoot. */
    double together(double d) {
      return Math.min(1, Math.max(0, (d - own()) / (glued() - own())));
    }

    double looseShear() {
      return PanelSection.KAPPA * sum(p -> shear.applyAsDouble(p) * p.t());
    }

    /**
     * Shear stiffness by the energy of the shear stress that goes with bending: 1/A = ∫ S²/G dz /
     * D², S the first moment of E below z. Gauss points make it exact, S being quadratic in z.
     */
    double gluedShear() {
      double axis = axis();
      double below = 0;
      double moment = 0;
      double energy = 0;
      for (Ply ply : plies) {
        double e = modulus.applyAsDouble(ply);
        for (int k = -1; k <= 1; k++) {
          double up = ply.t() / 2 * (1 + k * Math.sqrt(0.6));
          double s = moment + e * up * (below + up / 2 - axis);
          double weight = ply.t() * (k == 0 ? 8 : 5) / 18.0;
          energy += weight * s * s / shear.applyAsDouble(ply);
        }
        moment += e * ply.t() * (below + ply.t() / 2 - axis);
        below += ply.t();
      }
      return glued() * glued() / energy;
    }
  }
}
