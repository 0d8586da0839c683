package org.stoutwork.section;

import java.util.ArrayList;
import java.util.List;

/**
 * Layers on one another, bent flatwise.
 *
 * @param b width, mm, positive
 * @param layers from the lowest to the uppermost; at least one
 * @param bond how they hold together
 */
public record LayeredSection(double b, List<Layer> layers, LayerBond bond) {

  /**
   * @throws IllegalArgumentException if there is no layer, the width is not positive, or screws
   *     hold more than two layers (the method covers two)
   */
  public LayeredSection {
    layers = List.copyOf(layers);
    if (layers.isEmpty() || !(b > 0)) {
      throw new IllegalArgumentException(
          "a layered section needs a positive width and a layer; given %s mm and %s layers"
              .formatted(b, layers.size()));
    }
    if (bond instanceof LayerBond.Screwed && layers.size() > 2) {
      throw new IllegalArgumentException(
          "screwed layers are covered up to two; given " + layers.size());
    }
  }

  /** Whole thickness, mm. */
  public double thickness() {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }

  /**
   * Bending stiffness EI, N·mm².
   *
   * @param span of a simply supported length under the load, mm; only screwed layers depend on it
   */
  public double bendingStiffness(double span) {
    if (layers.size() == 1 || bond instanceof LayerBond.Loose) {
      return ownStiffness();
    }
    return bond instanceof LayerBond.Screwed screws
        ? screwedStiffness(screws, span)
        : gluedStiffness();
  }

  /** Σ E·b·t³/12: each layer bends about its own middle. */
  private double ownStiffness() {
    return layers.stream()
        .mapToDouble(l -> l.modulus() * new Rectangle(b, l.thickness()).secondMoment())
        .sum();
  }

  /** Transformed section: Σ E(I + A·z²) about the common neutral axis. */
  private double gluedStiffness() {
    double axis = neutralAxis();
    List<Double> middles = middles();
    double sum = ownStiffness();
    for (int i = 0; i < layers.size(); i++) {
      double z = middles.get(i) - axis;
      sum += axial(i) * z * z;
    }
    return sum;
  }

  /**
   * Stress in one layer.
   *
   * @param middle stress at its middle, from the layers' working together, MPa; of one sign above
   *     the common axis and of the other below it
   * @param faces how much more or less it is at its faces, MPa
   */
  public record Bent(double middle, double faces) {

    /** Greatest stress in the layer, pulling or pressing, MPa. */
    public double greatest() {
      return Math.abs(middle) + Math.abs(faces);
    }
  }

  /**
   * Stresses in all layers, from the lowest: E·z·M/EI at the middle of a glued layer, nothing at
   * that of a loose one, and what the screws hand over at that of a screwed one (EN 1995-1-1 Annex
   * B, (B.7) and (B.8), from memory); E·t/2·M/EI more at the faces.
   *
   * @param moment in the whole width, N·mm
   * @param span of a simply supported length under the load, mm; only screwed layers depend on it
   */
  public List<Bent> stresses(double moment, double span) {
    double curvature = moment / bendingStiffness(span);
    List<Bent> out = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      double faces = layer.modulus() * layer.thickness() / 2 * curvature;
      out.add(new Bent(middleStress(i, span) * curvature, faces));
    }
    return out;
  }

  /** Stress at the middle of a layer for a curvature of 1/mm, N/mm. */
  private double middleStress(int i, double span) {
    if (layers.size() == 1 || bond instanceof LayerBond.Loose) {
      return 0;
    }
    if (bond instanceof LayerBond.Screwed screws) {
      double force = handedOver(screws, span) / (b * layers.get(i).thickness());
      return i == 0 ? -force : force;
    }
    return layers.get(i).modulus() * (middles().get(i) - neutralAxis());
  }

  /** Neutral axis of the glued stack, mm above its underside. */
  public double neutralAxis() {
    List<Double> middles = middles();
    double moment = 0;
    double stiffness = 0;
    for (int i = 0; i < layers.size(); i++) {
      moment += axial(i) * middles.get(i);
      stiffness += axial(i);
    }
    return moment / stiffness;
  }

  /**
   * What of a glued stack pulls on the line below some layer, Σ E·A·z of the layers above it about
   * the common neutral axis, N·mm.
   *
   * @param line number of layers below it, 1 or more
   */
  public double firstMoment(int line) {
    double axis = neutralAxis();
    List<Double> middles = middles();
    double sum = 0;
    for (int i = line; i < layers.size(); i++) {
      sum += axial(i) * (middles.get(i) - axis);
    }
    return Math.abs(sum);
  }

  /**
   * Two layers with slip under a half-sine load (EN 1995-1-1 Annex B, from memory, in the symmetric
   * form for two layers): Σ E·I + z²/(1/EA_1 + 1/EA_2 + π²·s/(rows·K·L²)).
   */
  private double screwedStiffness(LayerBond.Screwed screws, double span) {
    return ownStiffness() + betweenMiddles() * handedOver(screws, span);
  }

  /** Distance of the middles of two layers, mm. */
  private double betweenMiddles() {
    return (layers.get(0).thickness() + layers.get(1).thickness()) / 2;
  }

  /** Force that the screws hand from one layer to the other for a curvature of 1/mm, N·mm. */
  private double handedOver(LayerBond.Screwed screws, double span) {
    double slip =
        Math.PI * Math.PI * screws.spacing() / (screws.rows() * screws.slipModulus() * span * span);
    return betweenMiddles() / (1 / axial(0) + 1 / axial(1) + slip);
  }

  private double axial(int i) {
    return layers.get(i).modulus() * b * layers.get(i).thickness();
  }

  private List<Double> middles() {
    List<Double> out = new ArrayList<>();
    double below = 0;
    for (Layer layer : layers) {
      out.add(below + layer.thickness() / 2);
      below += layer.thickness();
    }
    return out;
  }
}
