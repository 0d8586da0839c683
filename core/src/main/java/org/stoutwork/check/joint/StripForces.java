package org.stoutwork.check.joint;

import java.util.Optional;
import java.util.function.DoublePredicate;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.bench.Grain;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;

/**
 * The place of the top in which a force of its strips is greatest for their width, and the action
 * under which it is.
 *
 * @param strip of the top
 * @param width of the strip, mm
 * @param leading action
 * @param member length of the strip
 * @param atStart whether the place is the start of that length
 * @param slot of the force among the end forces of a member
 */
record StripForces(
    String strip, double width, Stand leading, String member, boolean atStart, int slot) {

  private static final int SHEAR = 2;
  private static final int MOMENT = 4;
  private static final String TOP_STRIP = "top strip ";

  /** The greatest shear of the strips that run one way. */
  static StripForces shear(Inquiry inquiry, Grain way) {
    return greatest(inquiry, way, SHEAR, x -> true).orElseThrow();
  }

  /**
   * The greatest shear of the strips along the bench in some of their lengths; none where there are
   * no such lengths.
   *
   * @param where whether a length counts, by the distance of its middle from the left end, mm
   */
  static Optional<StripForces> shearAlong(Inquiry inquiry, DoublePredicate where) {
    return greatest(inquiry, Grain.ALONG, SHEAR, where);
  }

  /** The greatest moment of the strips that run one way. */
  static StripForces moment(Inquiry inquiry, Grain way) {
    return greatest(inquiry, way, MOMENT, x -> true).orElseThrow();
  }

  private static Optional<StripForces> greatest(
      Inquiry inquiry, Grain way, int slot, DoublePredicate where) {
    TopGrid grid = inquiry.at(JointLevel.MEAN).model().grid();
    double first = (way == Grain.ALONG ? grid.stations() : grid.lines()).get(0);
    StripForces found = null;
    double most = -1;
    for (Stand stand : inquiry.stands()) {
      FrameResult alone = inquiry.at(JointLevel.MEAN).alone(stand.unit());
      for (Part part : inquiry.at(JointLevel.MEAN).model().parts()) {
        if (part.kind() == PartKind.TOP && part.name().startsWith(TOP_STRIP + way.words())) {
          for (int i = 0; i < part.pieces().size(); i++) {
            Piece piece = part.pieces().get(i);
            double next =
                i + 1 < part.pieces().size() ? part.pieces().get(i + 1).from() : part.length();
            if (!where.test(first + (piece.from() + next) / 2)) {
              continue;
            }
            double width = piece.section().b();
            MemberResult member = alone.member(piece.member());
            for (boolean start : new boolean[] {true, false}) {
              double end = (start ? member.start() : member.end())[slot];
              double size = Math.abs(stand.force() * end) / width;
              if (size > most) {
                most = size;
                found = new StripForces(part.name(), width, stand, piece.member(), start, slot);
              }
            }
          }
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /** The force there in a result, N or N·mm. */
  double of(FrameResult result) {
    MemberResult at = result.member(member);
    return (atStart ? at.start() : at.end())[slot];
  }

  /** Where it is, in words. */
  String place() {
    return "strip " + strip.substring(TOP_STRIP.length());
  }
}
