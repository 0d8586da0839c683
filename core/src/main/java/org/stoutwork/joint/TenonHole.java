package org.stoutwork.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * What a joint takes out of the post's section: so wide across the rail, so deep behind the
 * shoulder.
 *
 * @param width across the rail, mm
 * @param height along the post, mm
 * @param depth behind the shoulder, mm
 * @param below from the rail's lower edge to the hole, mm
 * @param offset of its middle from the post's middle across the rail, mm
 */
public record TenonHole(double width, double height, double depth, double below, double offset) {

  /** The hole of a joint between two pieces. */
  public static TenonHole of(Joint joint, Joint.Members members) {
    return joint.fold(new Cases(members));
  }

  /** The hole of a joint, then what goes with it: the groove of a haunch, the bores of bolts. */
  public static List<TenonHole> all(Joint joint, Joint.Members members) {
    List<TenonHole> out = new ArrayList<>();
    out.add(of(joint, members));
    if (joint instanceof MortiseAndTenon tenon) {
      tenon.haunch().ifPresent(haunch -> out.add(groove(tenon, haunch, members)));
    } else if (joint instanceof BoltedTenon bolted) {
      for (double height : bolted.boltHeights(members)) {
        out.add(
            new TenonHole(
                bolted.bore(), bolted.bore(), members.postDepth(), height - bolted.bore() / 2, 0));
      }
    }
    return List.copyOf(out);
  }

  private static TenonHole groove(
      MortiseAndTenon joint, MortiseAndTenon.Haunch haunch, Joint.Members members) {
    return new TenonHole(
        joint.mortiseWidth(),
        haunch.height(),
        Math.min(haunch.length(), members.postDepth()),
        joint.shoulderBelow() + joint.height(),
        joint.offCentre());
  }

  private record Cases(Joint.Members members) implements Joint.Cases<TenonHole> {

    @Override
    public TenonHole mortiseAndTenon(MortiseAndTenon joint) {
      return new TenonHole(
          joint.mortiseWidth(),
          joint.height(),
          joint.lengthInPost(members),
          joint.shoulderBelow(),
          joint.offCentre());
    }

    @Override
    public TenonHole bridle(Bridle joint) {
      return new TenonHole(joint.slotWidth(), members.railDepth(), members.postDepth(), 0, 0);
    }

    @Override
    public TenonHole boltedTenon(BoltedTenon joint) {
      return new TenonHole(
          joint.thickness(), joint.height(), joint.length(), joint.shoulderBelow(), 0);
    }

    @Override
    public TenonHole looseWedgeTenon(LooseWedgeTenon joint) {
      return new TenonHole(
          joint.thickness(), joint.height(), members.postDepth(), joint.shoulderBelow(), 0);
    }

    @Override
    public TenonHole halfLap(HalfLap joint) {
      double off = (members.postThickness() - joint.railPart()) / 2;
      return new TenonHole(joint.railPart(), members.railDepth(), members.postDepth(), 0, off);
    }

    @Override
    public TenonHole dowelledButt(DowelledButt joint) {
      return new TenonHole(joint.dowel().diameter(), members.railDepth(), joint.inPost(), 0, 0);
    }

    @Override
    public TenonHole housing(Housing joint) {
      return new TenonHole(members.railThickness(), members.railDepth(), joint.depth(), 0, 0);
    }

    @Override
    public TenonHole screwedButt(ScrewedButt joint) {
      return new TenonHole(
          joint.screws().screw().diameter(), members.railDepth(), members.postDepth(), 0, 0);
    }

    @Override
    public TenonHole statedSpring(StatedSpring joint) {
      return new TenonHole(0, 0, 0, 0, 0);
    }
  }
}
