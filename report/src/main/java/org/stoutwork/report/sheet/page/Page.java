package org.stoutwork.report.sheet.page;

import java.util.List;
import org.stoutwork.report.drawing.Mark;

/**
 * One page.
 *
 * @param number 1 for the first
 * @param pieces in reading order, at their places on the paper
 */
public record Page(int number, List<Piece> pieces) {

  /** Keeps its own copy. */
  public Page {
    pieces = List.copyOf(pieces);
  }

  /** All marks in the order of drawing. */
  public List<Mark> marks() {
    return pieces.stream().flatMap(piece -> piece.marks().stream()).toList();
  }
}
