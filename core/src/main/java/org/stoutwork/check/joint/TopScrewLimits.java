package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.fastener.CoachScrew;
import org.stoutwork.fastener.Screw;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.RowForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.quantity.Writing;

/**
 * The limits of the screws in one top rail. A screw with play bears only when the top has slid by
 * it, so only those without play share shear: the one that holds the top carries it in both
 * directions, those in slots no wider than they are share it along the bench. Where all have play,
 * one bears first and is counted alone, wherever it stands. Friction is not counted: it needs
 * weight, and a top that is lifted has none to spare.
 */
final class TopScrewLimits {

  /** Width of a single row across the grain that counts for its stiffness, in diameters; NDS. */
  private static final double GROUP_WIDTH = 3;

  private static final double NONE = Double.POSITIVE_INFINITY;

  /**
   * What the screws of a rail hold together, N.
   *
   * @param pull that lifts the top
   * @param lengthways shear along the bench
   * @param sideways shear across it, along the rail
   */
  record Held(double pull, double lengthways, double sideways) {}

  private final Bench bench;
  private final TopFixing fixing;
  private final EndFrame frame;
  private final ScrewRow row;
  private final JointStrength strength;

  TopScrewLimits(Bench bench, EndFrame frame, JointStrength strength) {
    this.bench = bench;
    this.fixing = bench.top().fixing();
    this.frame = frame;
    this.row = ScrewRow.of(bench, frame);
    this.strength = strength;
  }

  /** Each limit for the screw that is used most. */
  List<JointLimit> of(Held held) {
    List<JointLimit> out = new ArrayList<>();
    if (holds()) {
      RowForces.Tight tight = new RowForces.Tight(1, Math.max(1, fixing.tightAlong()), why());
      double from = row.still(fixing.held());
      out.addAll(limits(held, tight, ScrewHole.round(d()), from));
      if (row.count() == 1) {
        return out;
      }
      double shared = fixing.fitsAlong() ? held.lengthways() : 0;
      Held slotted = new Held(held.pull(), shared, 0);
      out.addAll(limits(slotted, tight, fixing.hole(), row.foremost()));
    } else {
      RowForces.Tight tight =
          new RowForces.Tight(
              Math.max(1, fixing.tightAcross()), Math.max(1, fixing.tightAlong()), why());
      out.addAll(limits(held, tight, fixing.hole(), row.foremost()));
    }
    Map<String, JointLimit> most = new LinkedHashMap<>();
    for (JointLimit limit : out) {
      most.merge(limit.failure(), limit, (a, b) -> b.utilisation() > a.utilisation() ? b : a);
    }
    return List.copyOf(most.values());
  }

  /** Whether one screw of the rail fits its hole while the others have play across the bench. */
  private boolean holds() {
    return fixing.tightAcross() == 1 && !fixing.fitsAcross();
  }

  private String why() {
    int all = row.count();
    int along = fixing.tightAlong();
    int across = fixing.tightAcross();
    if (along == all && across == all) {
      return "";
    }
    String shared =
        "Shear is shared by the screws that have no play: %s of %s along the bench, %s of %s across"
                .formatted(along, all, across, all)
            + " it. Friction is not counted.";
    return fixing.play() == 0
        ? shared
        : shared
            + " The top may slide by %s mm until one bears, which is counted alone."
                .formatted(Writing.fixed(fixing.play(), 1));
  }

  private double d() {
    return fixing.screwDiameter().mm();
  }

  private boolean lengthwise() {
    return bench.top().layers().get(0).grain() == Grain.ALONG;
  }

  /** Grain of the rail runs across the bench, along the row; that of the top as its layer says. */
  private List<JointLimit> limits(Held held, RowForces.Tight tight, ScrewHole hole, double at) {
    Held ofOne =
        new Held(
            held.pull() / row.count(),
            held.lengthways() / tight.across(),
            held.sideways() / tight.along());
    Screwing screwing = screwing(ofOne, hole);
    Rail rail = frame.topRail();
    double next = row.count() == 1 ? NONE : row.pitch();
    double further = Math.min(at - row.foremost(), row.place(row.count() - 1) - at);
    double inward = Math.max(0, further);
    double depth = rail.depth().mm() / d();
    double angle = screwing.headAngle();
    Seat inRail =
        new Seat(
            "rail",
            row.fromRailEnd() + inward,
            rail.thickness().mm() / 2,
            next,
            NONE,
            angle,
            depth);
    double reach = screwing.reach() / d();
    double edge = row.fromTopEdge() + inward;
    double end = row.fromTopEnd();
    Seat inTop =
        lengthwise()
            ? new Seat("top", end, edge, NONE, next, screwing.pointAngle(), reach)
            : new Seat("top", edge, end, next, NONE, screwing.pointAngle(), reach);
    double thick = bench.top().layers().get(0).thickness().mm();
    RowForces forces =
        new RowForces(
            row.count(),
            tight,
            row.pitch(),
            held.pull(),
            held.sideways(),
            held.lengthways(),
            strength.rail().modulus() * rail.thickness().mm() * rail.depth().mm(),
            strength.post().modulus() * thick * GROUP_WIDTH * d());
    return ScrewCapacity.utilisations(
        screwing, strength.family(), forces, List.of(inRail), List.of(inTop), true);
  }

  /**
   * A screw up through the whole depth of its rail.
   *
   * @param ofOne its own share, which gives the direction of its shear: that along the bench may be
   *     shared by more screws than that across it
   */
  private Screwing screwing(Held ofOne, ScrewHole hole) {
    double d = d();
    double through = frame.topRail().depth().mm();
    double thread = fixing.threadLength().mm();
    double length = through + thread + d;
    double washer = fixing.washerDiameter().mm();
    Screw screw =
        fixing.screw() == FixingScrew.COACH_SCREW
            ? CoachScrew.plain(d, length, thread, washer)
            : WoodScrew.plain(d, length, thread + d, washer);
    double toTheBench = Math.toDegrees(Math.atan2(ofOne.sideways(), ofOne.lengthways()));
    double inRail = 90 - toTheBench;
    return new Screwing(
        screw,
        through,
        strength.rail(),
        strength.post(),
        inRail,
        lengthwise() ? toTheBench : inRail,
        false,
        hole,
        fixing.pilotDiameter().mm());
  }

  /** Length of thread that holds in the top, mm. */
  double thread() {
    return screwing(new Held(0, 0, 0), fixing.hole()).thread();
  }
}
