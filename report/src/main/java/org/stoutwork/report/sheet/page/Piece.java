package org.stoutwork.report.sheet.page;

import java.util.List;
import org.stoutwork.report.drawing.Mark;

/**
 * Marks that belong to one element.
 *
 * @param tag id of the element, or {@link Tag#NONE}
 * @param marks in the order of drawing
 */
public record Piece(int tag, List<Mark> marks) {

  /** Keeps its own copy. */
  public Piece {
    marks = List.copyOf(marks);
  }

  /** One mark of an element. */
  public static Piece of(int tag, Mark mark) {
    return new Piece(tag, List.of(mark));
  }

  /** Moved right and down, mm. */
  public Piece moved(double dx, double dy) {
    return new Piece(tag, marks.stream().map(m -> m.moved(dx, dy)).toList());
  }
}
