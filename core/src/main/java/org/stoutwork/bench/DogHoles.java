package org.stoutwork.bench;

import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;

/**
 * A row of dog holes along the bench, through the whole top.
 *
 * @param shape of a hole
 * @param size diameter of a round hole, side of a square one
 * @param spacing from middle to middle
 * @param fromFront middle line of the row, from the front edge of the top
 * @param fromLeft middle of the first hole, from the left end of the top
 * @param count holes in the row, at least 1
 * @param clampForce the most with which work is meant to be pressed between dogs
 */
public record DogHoles(
    Shape shape,
    Length size,
    Length spacing,
    Length fromFront,
    Length fromLeft,
    int count,
    Force clampForce) {

  /** Shapes of a hole. */
  public enum Shape {
    ROUND("round"),
    SQUARE("square");

    private final String words;

    Shape(String words) {
      this.words = words;
    }

    /** As it is written and printed. */
    public String words() {
      return words;
    }
  }

  /** Middle of a hole from the left end, mm; the first has number 0. */
  public double atMm(int hole) {
    return fromLeft.mm() + hole * spacing.mm();
  }

  /** Middle of the last hole from the left end, mm. */
  public double lastMm() {
    return atMm(count - 1);
  }

  /** How much of the holes lies between two places along the bench, mm. */
  public double within(double from, double to) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += overlap(atMm(i), from, to);
    }
    return sum;
  }

  /** How much of a hole's width lies between two places across the bench, mm. */
  public double across(double front, double back) {
    return overlap(fromFront.mm(), front, back);
  }

  private double overlap(double middle, double from, double to) {
    double half = size.mm() / 2;
    return Math.max(0, Math.min(middle + half, to) - Math.max(middle - half, from));
  }
}
