package org.stoutwork.check.member;

import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.Part;
import org.stoutwork.section.NetSection;

/**
 * A place at which a part is looked at: an end of one of its pieces.
 *
 * @param part it belongs to
 * @param member of the model
 * @param atStart of that member, or at its end
 * @param at distance from the start of the part, mm
 * @param upDown section that bends up and down (in the local x-z plane), less its mortise
 * @param sideways section that bends sideways (in the local x-y plane), less its mortise
 * @param mortised whether a mortise is cut here
 */
record Cut(
    Part part,
    String member,
    boolean atStart,
    double at,
    NetSection upDown,
    NetSection sideways,
    boolean mortised) {

  /** Internal forces N, Vy, Vz, T, My, Mz at this place. */
  double[] forces(FrameResult result) {
    return forces(result.member(member));
  }

  /** The same from the forces on the member's own end: the first piece of a part begins there. */
  double[] forces(MemberResult own) {
    if (!atStart) {
      return own.end();
    }
    double[] start = own.start();
    for (int i = 0; i < start.length; i++) {
      start[i] = -start[i];
    }
    return start;
  }

  double area() {
    return upDown.area();
  }
}
