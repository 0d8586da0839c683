package org.stoutwork.report.file.tree;

import java.util.Comparator;

/**
 * A spot in a file.
 *
 * @param file the name the file is called by in messages
 * @param line line, counted from 1; 0 when the fault concerns the file as a whole
 * @param column column in characters (code points), counted from 1; 0 as above
 */
public record Spot(String file, int line, int column) implements Comparable<Spot> {

  private static final Comparator<Spot> FILE_ORDER =
      Comparator.comparingInt(Spot::line).thenComparingInt(Spot::column);

  /**
   * The file as a whole.
   *
   * @param file the name the file is called by
   * @return a spot without line and column
   */
  public static Spot wholeFile(String file) {
    return new Spot(file, 0, 0);
  }

  /** Orders by line, then column; the file name plays no part. */
  @Override
  public int compareTo(Spot other) {
    return FILE_ORDER.compare(this, other);
  }

  /** {@code line 4, column 3}, for use inside a sentence. */
  public String inWords() {
    return "line " + line + ", column " + column;
  }

  /** {@code bench.yaml:4:3}, or the bare file name for the file as a whole. */
  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
