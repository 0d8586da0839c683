package org.stoutwork.joint.bolted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The section of a tenon where bolts of another joint run through it from cheek to cheek. What is
 * left are parts one above the other; over the short length of the bore they bend alike, so that
 * each takes shear as the cube of its height. That a bolt also holds the tenon like a peg is not
 * counted.
 *
 * @param thickness of all tenons together, mm
 * @param height of the tenon, mm
 * @param slots what the bores take of the height
 */
public record CrossedTenon(double thickness, double height, List<Slot> slots) {

  /**
   * A part of the height that is gone.
   *
   * @param from its lower end above the tenon's middle, mm
   * @param to its upper end above the tenon's middle, mm
   * @param fromShoulder distance of the bore's axis from the shoulder, mm
   * @param diameter of the bore, mm
   */
  public record Slot(double from, double to, double fromShoulder, double diameter) {

    /** Distance of its near side from the shoulder, mm. */
    public double near() {
      return Math.max(0, fromShoulder - diameter / 2);
    }

    /** Height that it takes, mm. */
    public double size() {
      return to - from;
    }

    /** Its middle above the tenon's middle, mm. */
    public double middle() {
      return (from + to) / 2;
    }
  }

  private static final Formula LEFT =
      Formula.define("h_n")
          .meaning("height of tenon that the crossing bores leave")
          .unit(Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("o_Σ", "height taken by the bores", Unit.MM)
          .as("h - o_Σ")
          .source(Source.derived("geometry"));

  private static final Formula SHEARED =
      Formula.define("h_v")
          .meaning(
              "height that counts for shear, the parts taking it as the cubes of their heights")
          .unit(Unit.MM)
          .where("h_3", "sum of the cubes of the heights of the parts", Unit.MM3)
          .where("h_m", "height of the highest part", Unit.MM)
          .as("h_3/h_m^2")
          .source(Source.derived("beam theory: parts that bend alike"));

  private static final Formula SHIFT =
      Formula.define("c_n")
          .meaning("shift of the net middle away from the bores")
          .unit(Unit.MM)
          .where("m_o", "sum of heights taken times their distances from mid-height", Unit.MM2)
          .where("h_n", "height that is left", Unit.MM)
          .as("abs(m_o)/h_n")
          .source(Source.derived("geometry"));

  private static final Formula MODULUS =
      Formula.define("W_y")
          .meaning("section modulus of the crossed tenon, bent up and down")
          .unit(Unit.MM3)
          .where("t", "thickness of all tenons", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("q_o", "sum of o^3/12 + o*y^2 of the heights taken", Unit.MM3)
          .where("h_n", "height that is left", Unit.MM)
          .where("c_n", "shift of the net middle", Unit.MM)
          .as("t*(h^3/12 - q_o - h_n*c_n^2)/(h/2 + c_n)")
          .source(Source.derived("parallel axes"));

  private static final Source GEOMETRY = Source.derived("geometry");

  /** Keeps its own list, the lowest first. */
  public CrossedTenon {
    List<Slot> sorted = new ArrayList<>(slots);
    sorted.sort(Comparator.comparingDouble(Slot::from));
    slots = List.copyOf(sorted);
  }

  /**
   * A tenon under the bores that cross its joint; those that miss it are left out.
   *
   * @param below shoulder below the tenon, mm
   * @param length of the tenon in the post, mm
   */
  public static CrossedTenon of(
      double thickness, double height, double below, double length, List<CrossBore> bores) {
    List<Slot> slots = new ArrayList<>();
    for (CrossBore bore : bores) {
      double middle = bore.height() - below - height / 2;
      double from = Math.max(-height / 2, middle - bore.diameter() / 2);
      double to = Math.min(height / 2, middle + bore.diameter() / 2);
      Slot slot = new Slot(from, to, bore.fromShoulder(), bore.diameter());
      if (to > from && slot.near() < length) {
        slots.add(slot);
      }
    }
    return new CrossedTenon(thickness, height, slots);
  }

  /** Whether any bolt crosses it. */
  public boolean crossed() {
    return !slots.isEmpty();
  }

  /** Distance from the shoulder to the near side of the first bore, mm. */
  public double near() {
    return slots.stream().mapToDouble(Slot::near).min().orElse(Double.POSITIVE_INFINITY);
  }

  /** Height that is left, mm; 0 if the bores leave nothing. */
  public double left(Pad pad) {
    double taken = apart().stream().mapToDouble(Slot::size).sum();
    return Math.max(0, pad.take(LEFT, height, taken));
  }

  /** The slots, where they overlap counted once. */
  private List<Slot> apart() {
    List<Slot> out = new ArrayList<>();
    double done = -height / 2;
    for (Slot slot : slots) {
      double from = Math.max(done, slot.from());
      if (slot.to() > from) {
        out.add(new Slot(from, slot.to(), slot.fromShoulder(), slot.diameter()));
        done = slot.to();
      }
    }
    return out;
  }

  /** Height of a sound tenon with the same greatest shear stress up and down, mm. */
  public double sheared(Pad pad) {
    List<Double> parts = parts();
    double highest = parts.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    if (highest <= 0) {
      return 0;
    }
    double cubes = parts.stream().mapToDouble(part -> part * part * part).sum();
    pad.given("h_3", "sum of the cubes of the heights of the parts", cubes, Unit.MM3, GEOMETRY);
    return pad.take(SHEARED, cubes, highest);
  }

  private List<Double> parts() {
    List<Double> out = new ArrayList<>();
    double done = -height / 2;
    for (Slot slot : slots) {
      out.add(Math.max(0, slot.from() - done));
      done = Math.max(done, slot.to());
    }
    out.add(Math.max(0, height / 2 - done));
    return out;
  }

  /** Section modulus up and down, mm³; 0 if the bores leave nothing. */
  public double modulus(Pad pad, double left) {
    if (left <= 0) {
      return 0;
    }
    List<Slot> slots = apart();
    double moment = slots.stream().mapToDouble(s -> s.size() * s.middle()).sum();
    double second =
        slots.stream()
            .mapToDouble(s -> Math.pow(s.size(), 3) / 12 + s.size() * s.middle() * s.middle())
            .sum();
    double shift = pad.take(SHIFT, moment, left);
    return pad.take(MODULUS, thickness, height, second, left, shift);
  }
}
