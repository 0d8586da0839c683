package org.stoutwork.joint.advice;

import java.util.List;
import java.util.Optional;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.PegWood;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;

/**
 * The geometry a joiner would choose for two pieces of which nothing else was said, with the words
 * that say why.
 *
 * @param height of the tenon, mm
 * @param thickness of the tenon, mm
 * @param length of a blind tenon, mm
 * @param shoulder below and above, mm
 * @param reasons one sentence for each choice
 */
public record TenonProportions(
    double height, double thickness, double length, double shoulder, List<String> reasons) {

  /** What the leaf of a wedged tenon is bent to; less than f_m,k/E of any strength class. */
  private static final double LEAF_STRAIN = 0.0018;

  /** Slope of a loose wedge, degrees. */
  private static final double LOOSE_SLOPE = 6;

  /** Oak, the usual wood of pegs; from memory. */
  public static final PegWood OAK = new PegWood("oak", 12300, 105, 0.68, 720);

  /** Beech, the usual wood of dowels; from memory. */
  public static final PegWood BEECH = new PegWood("beech", 12200, 103, 0.64, 680);

  /** Keeps its own copy of the reasons. */
  public TenonProportions {
    reasons = List.copyOf(reasons);
  }

  /** Proportions for a rail of depth d and thickness b meeting a post p deep. */
  public static TenonProportions forRail(double d, double b, double p) {
    double shoulder = whole(Math.min(25, Math.max(5, d / 6)));
    double height = d - 2 * shoulder;
    double thickness = whole(b / 3);
    double length = whole(Math.min(p - 12, Math.max(0.7 * p, 28)));
    return new TenonProportions(
        height,
        thickness,
        Math.max(length, 1),
        shoulder,
        List.of(
            "tenon a third of the rail's thickness, to the nearest millimetre",
            "shoulders a sixth of the rail's depth, 5 to 25 mm, below and above",
            "blind tenon seven tenths of the leg, with 12 mm left behind it"));
  }

  /** Proportions for the pieces of a joint. */
  public static TenonProportions forRail(Joint.Members members) {
    return forRail(
        members.railDepth(),
        Math.min(members.railThickness(), members.postThickness()),
        members.postDepth());
  }

  private static double whole(double mm) {
    return Math.max(1, Math.rint(mm));
  }

  /** A blind tenon in the given fit. */
  public MortiseAndTenon blind(Fit fit) {
    return new MortiseAndTenon(
        height, thickness, length, shoulder, 0, 1, false, Optional.empty(), fit);
  }

  /** A through tenon in the given fit. */
  public MortiseAndTenon through(Fit fit, Joint.Members members) {
    return new MortiseAndTenon(
        height, thickness, members.postDepth(), shoulder, 0, 1, true, Optional.empty(), fit);
  }

  /** A blind tenon with a haunch in place of the upper shoulder, a quarter of the rail deep. */
  public MortiseAndTenon haunched(Fit fit, Joint.Members members) {
    double haunch = whole(members.railDepth() / 4);
    double main = members.railDepth() - haunch - shoulder;
    return new MortiseAndTenon(
        main,
        thickness,
        length,
        shoulder,
        0,
        1,
        false,
        Optional.of(new MortiseAndTenon.Haunch(haunch, Math.min(12, length))),
        fit);
  }

  /** Two tenons side by side, each a fifth of the rail. */
  public MortiseAndTenon twin(Fit fit, Joint.Members members) {
    double each = whole(Math.min(members.railThickness(), members.postThickness() - 10) / 5);
    return new MortiseAndTenon(height, each, length, shoulder, 0, 2, false, Optional.empty(), fit);
  }

  /** A dry drawbored tenon: peg about half the tenon's thickness, offset an eighth of it. */
  public MortiseAndTenon drawbored() {
    double d = whole(Math.max(6, Math.min(thickness / 2, length / 5)));
    double from = Math.max(d, Math.min(2.5 * d, length - 3.5 * d));
    return blind(new Fit.Pegged(false, new Peg(d, OAK), 1, d / 8, from, 0));
  }

  /** A through tenon with two wedges. */
  public MortiseAndTenon wedged(boolean glued, Joint.Members members) {
    return through(wedges(glued, 2, height, members.postDepth()), members);
  }

  /**
   * Wedges of 5° in kerfs of two thirds of the tenon's length. One wedge sits in the middle; two
   * sit a sixth of the height from the edges, so that only thin leaves bend. The mortise is flared
   * by what bends a leaf to a strain that every strength class stands, at most 1.5 mm.
   *
   * @param height of the tenon, mm
   * @param length of the tenon, mm
   */
  public static Fit.Wedged wedges(boolean glued, int wedges, double height, double length) {
    double kerf = whole(length * 2 / 3);
    double leaf = height / (wedges == 1 ? 2 : 6);
    double spread = Math.min(1.5, LEAF_STRAIN * kerf * kerf / (1.5 * leaf));
    return new Fit.Wedged(glued, wedges, leaf, 5, spread, kerf, flare(spread, kerf));
  }

  /** Slope of a mortise whose end is wider by the spread, degrees. */
  public static double flare(double spread, double kerf) {
    return Math.toDegrees(Math.atan2(spread, kerf));
  }

  /** A glued bridle, tongue a third of the thinner piece. */
  public static Bridle bridle(Joint.Members members, boolean corner) {
    double t = whole(Math.min(members.railThickness(), members.postThickness()) / 3);
    return new Bridle(t, 1, corner, new Fit.Glued());
  }

  /**
   * A stub tenon, twice as thick as its bore, with an M10 bolt of class 4.6 and a barrel nut 16 mm
   * across.
   */
  public BoltedTenon bolted(Joint.Members members, double preload) {
    double stub = whole(Math.min(20, members.postDepth() / 3));
    double washer = Math.min(34, members.postThickness() - 4);
    return new BoltedTenon(
        height,
        Math.max(thickness, BoltedTenon.usualThickness(11)),
        stub,
        shoulder,
        new Bolt(BoltSize.M10, 400, new Washer(washer, 11, 3)),
        1,
        0,
        new BoltedTenon.Nut(16, Math.min(30, members.railThickness()), 60, true),
        preload);
  }

  /** A loose wedge as thick as the tenon, 12 mm at least, two fifths of it wide. */
  public LooseWedgeTenon looseWedge() {
    return looseWedge(height, thickness, shoulder);
  }

  /** A usual loose wedge for a tenon of these sizes. */
  public static LooseWedgeTenon looseWedge(double height, double thickness, double shoulder) {
    return new LooseWedgeTenon(
        height,
        thickness,
        shoulder,
        1.5 * thickness + 25,
        Math.max(12, thickness),
        0.4 * thickness,
        LOOSE_SLOPE);
  }
}
