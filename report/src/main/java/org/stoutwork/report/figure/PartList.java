package org.stoutwork.report.figure;

import java.util.List;
import org.stoutwork.bench.Bench;

/**
 * The parts of a bench, alike ones together under one letter, and the boxes that they fill.
 *
 * @param lines of the list, in the order of the letters
 * @param boxes of the drawing
 */
public record PartList(List<Line> lines, List<Box> boxes) {

  /**
   * Parts that are alike.
   *
   * @param mark letter in the drawing
   * @param name of the parts; where several names are alike, joined by commas
   * @param count how many
   * @param sizes mm: the two of the section, then the length; fewer where they are not known
   * @param wood of which they are; empty for what is bought
   */
  public record Line(String mark, String name, int count, List<Double> sizes, String wood) {

    /** Keeps its own copy. */
    public Line {
      sizes = List.copyOf(sizes);
    }
  }

  /** Keeps its own copies. */
  public PartList {
    lines = List.copyOf(lines);
    boxes = List.copyOf(boxes);
  }

  /** The parts of a bench. */
  public static PartList of(Bench bench) {
    return new PartCollector(bench).collect();
  }
}
