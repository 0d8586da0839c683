package org.stoutwork.joint.advice;

import java.util.Optional;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.JointFault;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;

/**
 * A joint changed so far that it follows one piece of advice, all else left as it is.
 *
 * @param note not followed
 * @param members the pieces
 */
record Followed(Note note, Joint.Members members) {

  /** The changed joint; empty if the advice is not of a size that can be changed alone. */
  Optional<Joint> of(Joint joint) {
    try {
      Joint changed = changed(joint);
      if (changed == null) {
        return Optional.empty();
      }
      changed.requireFits(members);
      return Optional.of(changed);
    } catch (JointFault noRoom) {
      return Optional.empty();
    }
  }

  private Joint changed(Joint joint) {
    if (joint instanceof MortiseAndTenon tenon) {
      return tenon(tenon);
    }
    if (joint instanceof BoltedTenon bolted) {
      return bolted(bolted);
    }
    if (joint instanceof LooseWedgeTenon wedged) {
      return wedged(wedged);
    }
    return joint instanceof Bridle bridle ? bridle(bridle) : null;
  }

  private boolean speaksOf(Advice advice) {
    return note.advice().equals(advice);
  }

  private double near() {
    return note.nearest();
  }

  private MortiseAndTenon tenon(MortiseAndTenon j) {
    double walls = 2 * j.count() - 1;
    if (speaksOf(Advice.TENON_THICKNESS)) {
      return with(j, j.height(), near() * members.railThickness(), j.length(), j.shoulderBelow());
    }
    if (speaksOf(Advice.TENON_LENGTH)) {
      double length = near() * members.postDepth();
      return with(j, j.height(), j.thickness(), length, j.shoulderBelow());
    }
    if (speaksOf(Advice.CHEEK)) {
      double thinner = j.thickness() + 2 * (note.value() - near()) / walls;
      return with(j, j.height(), thinner, j.length(), j.shoulderBelow());
    }
    if (speaksOf(Advice.CHEEK_RATIO)) {
      double thinner = (members.postThickness() - 2 * Math.abs(j.offCentre())) / (walls + 2);
      return with(j, j.height(), thinner, j.length(), j.shoulderBelow());
    }
    if (speaksOf(Advice.SHOULDER)) {
      return with(j, shouldered(j.height()), j.thickness(), j.length(), near());
    }
    if (speaksOf(Advice.CROSSED_GLUE)) {
      double below = j.shoulderBelow() + (j.height() - near()) / 2;
      return with(j, near(), j.thickness(), j.length(), below);
    }
    return null;
  }

  /** A tenon that loses in height what its lower shoulder gains. */
  private double shouldered(double height) {
    return height + note.value() - near();
  }

  private static MortiseAndTenon with(
      MortiseAndTenon j, double height, double thickness, double length, double below) {
    return new MortiseAndTenon(
        height,
        thickness,
        length,
        below,
        j.offCentre(),
        j.count(),
        j.through(),
        j.haunch(),
        j.fit());
  }

  private BoltedTenon bolted(BoltedTenon j) {
    if (speaksOf(Advice.SHOULDER)) {
      return with(j, shouldered(j.height()), j.thickness(), near());
    }
    return speaksOf(Advice.BORED_TENON)
        ? with(j, j.height(), near() * j.bore(), j.shoulderBelow())
        : null;
  }

  private static BoltedTenon with(BoltedTenon j, double height, double thickness, double below) {
    return new BoltedTenon(
        height,
        thickness,
        j.length(),
        below,
        j.bolt(),
        j.bolts(),
        j.spacing(),
        j.nut(),
        j.preload());
  }

  private LooseWedgeTenon wedged(LooseWedgeTenon j) {
    if (speaksOf(Advice.TENON_THICKNESS)) {
      return with(j, j.height(), near() * members.railThickness(), j.shoulderBelow());
    }
    if (speaksOf(Advice.SHOULDER)) {
      return with(j, shouldered(j.height()), j.thickness(), near());
    }
    return speaksOf(Advice.CROSSED_GLUE)
        ? with(j, near(), j.thickness(), j.shoulderBelow() + (j.height() - near()) / 2)
        : null;
  }

  private static LooseWedgeTenon with(
      LooseWedgeTenon j, double height, double thickness, double below) {
    return new LooseWedgeTenon(
        height, thickness, below, j.relish(), j.wedgeThickness(), j.wedgeWidth(), j.angle());
  }

  private Bridle bridle(Bridle j) {
    if (speaksOf(Advice.TENON_THICKNESS)) {
      return new Bridle(near() * members.railThickness(), j.count(), j.corner(), j.fit());
    }
    double thinner = j.thickness() + 2 * (note.value() - near()) / (2 * j.count() - 1);
    return speaksOf(Advice.CHEEK) ? new Bridle(thinner, j.count(), j.corner(), j.fit()) : null;
  }
}
