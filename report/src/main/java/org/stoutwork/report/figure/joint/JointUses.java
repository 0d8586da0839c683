package org.stoutwork.report.figure.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Leg;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.joint.Joint;

/** Finds the joints of a bench; those of one kind, one size and the same pieces are one use. */
public final class JointUses {

  private final Bench bench;
  private final Map<List<Object>, JointUse> found = new LinkedHashMap<>();

  private JointUses(Bench bench) {
    this.bench = bench;
  }

  /** The joints of a bench, each kind and size once: rails, legs, stretchers. */
  public static List<JointUse> of(Bench bench) {
    JointUses uses = new JointUses(bench);
    bench.endFrames().forEach(uses::frame);
    for (Stretcher stretcher : bench.stretchers()) {
      for (int bay = 0; bay + 1 < bench.endFrames().size(); bay++) {
        uses.stretcher(stretcher, bay);
      }
    }
    return List.copyOf(uses.found.values());
  }

  private void add(Joint joint, Place place, String rail, String post) {
    List<Object> key = List.of(joint, place.members(), place.run(), post);
    JointUse old = found.get(key);
    List<String> rails = new ArrayList<>(old == null ? List.of() : old.rails());
    if (!rails.contains(rail)) {
      rails.add(rail);
    }
    int count = old == null ? 1 : old.count() + 1;
    found.put(key, new JointUse(joint, old == null ? place : old.place(), rails, post, count));
  }

  private void frame(EndFrame frame) {
    Rail top = frame.topRail();
    if (top.seat() == Seat.OVER) {
      legs(frame, top.joint().joint(), top.depth().mm(), top.thickness().mm(), "top rail");
    } else {
      rail(frame, top, frame.name() + " top rail");
    }
    frame.bottomRail().ifPresent(r -> rail(frame, r, frame.name() + " bottom rail"));
    frame.foot().ifPresent(f -> foot(frame, f));
  }

  private void rail(EndFrame frame, Rail rail, String name) {
    Leg leg = frame.leg();
    Joint.Members members =
        new Joint.Members(
            rail.depth().mm(), rail.thickness().mm(), leg.across().mm(), leg.along().mm());
    Place place = upright(frame, members, rail.centreAt().mm());
    for (int end = 0; end < 2; end++) {
      add(rail.joint().joint(), place, name, "leg");
    }
  }

  private Place upright(EndFrame frame, Joint.Members members, double centre) {
    double half = members.railDepth() / 2;
    return new Place(
        members,
        Place.Run.UPRIGHT,
        Math.max(0, Layout.legTop(bench, frame) - centre - half),
        Math.max(0, centre - half - Layout.legBottom(frame)));
  }

  private void foot(EndFrame frame, Foot foot) {
    legs(frame, foot.joint().joint(), foot.depth().mm(), foot.thickness().mm(), "foot");
  }

  private void legs(EndFrame frame, Joint joint, double depth, double thickness, String post) {
    Leg leg = frame.leg();
    Joint.Members members =
        new Joint.Members(leg.across().mm(), leg.along().mm(), depth, thickness);
    double beyond = depth;
    Place place = new Place(members, Place.Run.TURNED, beyond, beyond);
    for (int end = 0; end < 2; end++) {
      add(joint, place, frame.name() + " legs", post);
    }
  }

  private void stretcher(Stretcher s, int bay) {
    String name = bench.endFrames().size() == 2 ? s.name() : s.name() + ", bay\u00a0" + (bay + 1);
    for (EndFrame frame : bench.endFrames().subList(bay, bay + 2)) {
      if (s.line() == StretcherLine.MIDDLE) {
        add(s.joint().joint(), crossing(frame, s), name, "rail");
      } else {
        Leg leg = frame.leg();
        Joint.Members members =
            new Joint.Members(
                s.endDepthMm(), s.thickness().mm(), leg.along().mm(), leg.across().mm());
        add(s.joint().joint(), upright(frame, members, s.endCentreMm()), name, "leg");
      }
    }
  }

  private static Place crossing(EndFrame frame, Stretcher s) {
    Rail rail = Layout.railOf(frame, s);
    Joint.Members members =
        new Joint.Members(
            s.endDepthMm(), s.thickness().mm(), rail.thickness().mm(), rail.length().mm());
    double rise = rail.centreAt().mm() - s.endCentreMm();
    double beyond = (rail.depth().mm() - s.endDepthMm()) / 2;
    return new Place(members, Place.Run.CROSSING, beyond + rise, beyond - rise);
  }
}
