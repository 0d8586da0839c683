package org.stoutwork.analysis.solve;

import java.util.Map;

/**
 * Something besides beams that joins the equations of a frame and may carry loads of its own. It
 * may join several systems of equations, one after the other, and keeps nothing of them.
 */
public interface Attachment {
  /**
   * Adds vertices, elements, conditions, springs and contacts.
   *
   * @param equations the equations of the frame, to be added to
   * @param vertices vertex numbers of the frame's nodes
   * @return what it has become in these equations
   */
  Attached join(Equations equations, Map<String, Integer> vertices);
}
