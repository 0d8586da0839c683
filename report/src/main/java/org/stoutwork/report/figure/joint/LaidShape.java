package org.stoutwork.report.figure.joint;

import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.report.drawing.Point;

/** Joints in which one piece is laid over or into the other. */
final class LaidShape {

  private LaidShape() {}

  /** The rail lies in front, flush with the post's front face. */
  static void draw(Views v, HalfLap j) {
    double d = v.depth();
    v.flush().postSeen().rail(new Point(-v.post(), d), new Point(-v.post(), 0)).faces();
    v.section.hiddenLine(0, 0, 0, d);
    double front = -v.members().postThickness() / 2;
    double parting = front + j.railPart();
    double back = -front;
    v.shoulder.cut(parting, 0, back, d).cutOtherwise(front, 0, parting, d);
    v.shoulder.below(front, 0, parting, 0, 0).below(parting, 0, back, 0, 0);
    j.screws().ifPresent(set -> screws(v, set, front));
    v.postDepth(j.screws().isPresent() ? 1 : 0).sizes(1);
  }

  /** Screws from the rail's face, turn by turn to either side of the middle of the lap. */
  private static void screws(Views v, ScrewSet set, double front) {
    double d = set.screw().diameter();
    for (int i = 0; i < set.count(); i++) {
      double z = set.heights(v.depth()).get(i);
      v.section.round(-v.post() / 2 + set.beside(i, v.post()), z, d);
      v.shoulder.seen(front, z - d / 2, front + set.screw().length(), z + d / 2);
    }
    v.shoulder.right(-front, 0, FastenedShape.heights(set, v.depth()));
    along(v, set);
  }

  /** Along the rail: from its end to each line of screws, and on to the shoulder. */
  private static void along(Views v, ScrewSet set) {
    double from = -v.post();
    int lines = set.stagger(v.post()) > 0 ? 2 : 1;
    for (int i = 0; i < lines; i++) {
      double x = -v.post() / 2 + set.beside(i, v.post());
      v.section.below(from, 0, x, set.heights(v.depth()).get(i), 0);
      from = x;
    }
    v.section.below(from, 0, 0, 0, 0);
  }

  static void draw(Views v, Housing j) {
    double d = v.depth();
    v.postCut().rail(new Point(-j.depth(), d), new Point(-j.depth(), 0)).faces();
    double b = v.members().railThickness() / 2;
    v.shoulder.cutOtherwise(-b, 0, b, d);
    v.section.below(-j.depth(), 0, 0, 0, 0);
    j.screws().ifPresent(set -> FastenedShape.screws(v, set));
    v.postDepth(1).sizes(j.screws().isPresent() ? 1 : 0);
  }
}
