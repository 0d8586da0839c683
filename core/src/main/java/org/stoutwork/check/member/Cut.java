package org.stoutwork.check.member;

import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.Part;

/**
 * A place at which a part is looked at: an end of one of its pieces, or between them.
 *
 * @param part it belongs to
 * @param member of the model
 * @param along that member: 0 at its start, 1 at its end
 * @param at distance from the start of the part, mm
 * @param upDown section that bends up and down (in the local x-z plane), less its mortise
 * @param sideways section that bends sideways (in the local x-y plane), less its mortise
 * @param mortises how many mortises are cut here; those that meet make one cut
 */
record Cut(
    Part part,
    String member,
    double along,
    double at,
    NetSizes upDown,
    NetSizes sideways,
    int mortises) {

  /** Internal forces N, Vy, Vz, T, My, Mz at this place. */
  double[] forces(FrameResult result) {
    return forces(result.member(member));
  }

  /** The same from the forces on the member's own end: the first piece of a part begins there. */
  double[] forces(MemberResult own) {
    if (along == 1) {
      return own.end();
    }
    if (along > 0) {
      return own.internalAt(along * own.length());
    }
    double[] start = own.start();
    for (int i = 0; i < start.length; i++) {
      start[i] = -start[i];
    }
    return start;
  }

  /** Whether a mortise is cut here. */
  boolean mortised() {
    return mortises > 0;
  }

  double area() {
    return upDown.area();
  }
}
