package org.stoutwork.report.file.tree;

/** Turns the YAML reader's positions in the prepared text into spots of the original. */
final class TokenSpots {

  private final String file;
  private final FlowText flow;
  private final int[] codePoints;

  TokenSpots(String file, FlowText flow) {
    this.file = file;
    this.flow = flow;
    this.codePoints = flow.prepared().codePoints().toArray();
  }

  Spot at(int line, int column) {
    return new Spot(file, Math.max(1, line), flow.originalColumn(line, Math.max(1, column)));
  }

  /**
   * The character at which a token begins.
   *
   * @param offset in code points from the beginning of the prepared text
   * @return the character; a blank behind the end, and for characters beyond 16 bits
   */
  char characterAt(long offset) {
    if (offset < 0 || offset >= codePoints.length) {
      return ' ';
    }
    int c = codePoints[(int) offset];
    return c > Character.MAX_VALUE ? ' ' : (char) c;
  }
}
