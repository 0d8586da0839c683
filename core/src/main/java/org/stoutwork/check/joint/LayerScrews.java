package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Inquiry;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.fastener.WoodScrew;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.screwed.LayerSlip;
import org.stoutwork.joint.screwed.LayersForces;
import org.stoutwork.joint.screwed.ScrewCapacity;
import org.stoutwork.joint.screwed.Screwing;
import org.stoutwork.joint.screwed.Seat;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.working.Pad;

/**
 * The screws of two layers held on each other without glue. They are taken to go through the lower
 * layer into the upper one, almost to its face. Rows are taken to be spread evenly over the top,
 * which says how far the outermost stand from its ends and edges.
 */
public final class LayerScrews {

  /** Wood left above the tip of a screw, mm. */
  private static final double LEFT = 3;

  /** Part of a screw that is threaded; the usual make. */
  private static final double THREADED = 2.0 / 3;

  /** Hole drilled for the thread, part of the screw; what a maker drills who was not asked. */
  private static final double PILOT = 0.55;

  private final Inquiry inquiry;
  private final Bench bench;
  private final LayerHold.Screwed hold;

  private LayerScrews(Inquiry inquiry, LayerHold.Screwed hold) {
    this.inquiry = inquiry;
    this.bench = inquiry.bench();
    this.hold = hold;
  }

  /** The limits of the screws, bent along the bench and across it; none without such screws. */
  public static List<CheckResult> all(Inquiry inquiry) {
    List<TopLayer> layers = inquiry.bench().top().layers();
    if (layers.size() != 2
        || !(inquiry.bench().top().hold() instanceof LayerHold.Screwed screwed)) {
      return List.of();
    }
    String missing =
        JointStrengthCheck.missing(inquiry, List.of(layers.get(0).wood(), layers.get(1).wood()));
    if (!missing.isEmpty()) {
      return List.of(
          new CheckResult.NotChecked(
              "layer-screws", "Screws between layers", "top", Topic.JOINT, missing));
    }
    LayerScrews screws = new LayerScrews(inquiry, screwed);
    List<CheckResult> out = new ArrayList<>();
    out.addAll(screws.bent(Grain.ALONG, screws.along()));
    out.addAll(
        screws.bent(
            Grain.ACROSS,
            List.of(
                new Spanning(
                    StripForces.shear(inquiry, Grain.ACROSS),
                    inquiry.bench().top().width().mm()))));
    return out;
  }

  /** A shear force and the simply supported length that it belongs to, mm. */
  private record Spanning(StripForces forces, double span) {}

  /** Between the end frames, and beyond them, where a bracket counts with twice its length. */
  private List<Spanning> along() {
    double left = bench.endFrames().get(0).at().mm();
    double right = bench.endFrames().get(bench.endFrames().size() - 1).at().mm();
    double beyond = Math.max(left, bench.top().length().mm() - right);
    List<Spanning> out = new ArrayList<>();
    StripForces.shearAlong(inquiry, x -> x > left && x < right)
        .ifPresent(f -> out.add(new Spanning(f, Layout.longestBay(bench))));
    StripForces.shearAlong(inquiry, x -> x < left || x > right)
        .ifPresent(f -> out.add(new Spanning(f, 2 * beyond)));
    return out;
  }

  /** The limits where the screws are used most. */
  private List<CheckResult> bent(Grain way, List<Spanning> places) {
    return places.stream()
        .map(place -> bent(way, place))
        .max(Comparator.comparingDouble(LayerScrews::use))
        .orElseThrow();
  }

  private static double use(List<CheckResult> checks) {
    return checks.stream()
        .filter(CheckResult.Checked.class::isInstance)
        .map(CheckResult.Checked.class::cast)
        .filter(check -> check.key().endsWith("yielding-across"))
        .mapToDouble(CheckResult.Checked::utilisation)
        .max()
        .orElse(0);
  }

  private List<CheckResult> bent(Grain way, Spanning place) {
    StripForces forces = place.forces();
    TopLayer lower = bench.top().layers().get(0);
    TopLayer upper = bench.top().layers().get(1);
    JointStrength strength =
        new JointStrengths(inquiry)
            .of(lower.wood(), upper.wood(), forces.leading().action().duration());
    Factors factors = Factors.strength(bench.basis());
    double shear =
        Math.abs(
            inquiry
                .read(JointLevel.MEAN, factors, forces.leading(), r -> new double[] {forces.of(r)})[
                0]);
    double d = hold.diameter().mm();
    double through = lower.thickness().mm();
    double length = through + upper.thickness().mm() - LEFT;
    if (length <= through + d) {
      return List.of(
          new CheckResult.NotChecked(
              "layer-screws-" + way.words(),
              "Screws between layers",
              "top",
              Topic.JOINT,
              "an upper layer of %s holds no screw of %s"
                  .formatted(upper.thickness(), Writing.with(d, Unit.MM, 3))));
    }
    Screwing screwing =
        new Screwing(
            WoodScrew.plain(d, length, Math.max(2 * d, THREADED * length), 2 * d),
            through,
            strength.rail(),
            strength.post(),
            0,
            lower.grain() == upper.grain() ? 0 : 90,
            false,
            ScrewHole.round(d),
            PILOT * d);
    LimitResult results =
        new LimitResult(
            "layer-screws-" + way.words(),
            "top",
            forces.leading().words(),
            factors.words(),
            inquiry.plan().criteria().strengthUse());
    return ScrewCapacity.utilisations(
            screwing,
            strength.family(),
            new LayersForces(slip(way, widthOf(forces, way), place.span()), modulus(), shear),
            seats(lower, "lower layer"),
            seats(upper, "upper layer"),
            true)
        .stream()
        .filter(limit -> counts(limit, way))
        .map(results::of)
        .toList();
  }

  /** Nothing pulls; how it is made is the same both ways and said once; holes are not known. */
  private static boolean counts(JointLimit limit, Grain way) {
    return limit.nature() == JointLimit.Nature.RULE
        ? way == Grain.ALONG && !limit.failure().startsWith("hole")
        : limit.failure().equals("screw yielding across");
  }

  /** A strip narrower than from row to row has one row all the same. */
  private double widthOf(StripForces forces, Grain way) {
    double row = way == Grain.ALONG ? bench.top().width().mm() / hold.rows() : hold.spacing().mm();
    return Math.max(forces.width(), row);
  }

  /** Slip modulus near failure, N/mm. */
  private double modulus() {
    Pad pad = Pad.blank();
    double density =
        Slip.density(
            pad,
            inquiry.timbers().get(bench.top().layers().get(0).wood()).density(),
            inquiry.timbers().get(bench.top().layers().get(1).wood()).density());
    return Slip.ultimate(pad, Slip.dowel(pad, density, hold.diameter().mm()));
  }

  private LayerSlip slip(Grain way, double width, double span) {
    double[] ea = new double[2];
    double own = 0;
    for (int i = 0; i < 2; i++) {
      TopLayer layer = bench.top().layers().get(i);
      FrameTimber timber = inquiry.timbers().get(layer.wood());
      double e = layer.grain() == way ? timber.e() : timber.eAcross();
      double t = layer.thickness().mm();
      ea[i] = e * t * width;
      own += e * t * t * t / 12 * width;
    }
    double between = bench.top().thicknessMm() / 2;
    double area = hold.spacing().mm() * bench.top().width().mm() / hold.rows();
    return new LayerSlip(ea[0], ea[1], own, between, area / width, span);
  }

  /**
   * Rows stand evenly over the width; the first and the last screw are equally far from the ends.
   */
  private List<Seat> seats(TopLayer layer, String name) {
    double lengthways = hold.spacing().mm();
    double pitch = bench.top().width().mm() / hold.rows();
    double sideways = hold.rows() == 1 ? Double.POSITIVE_INFINITY : pitch;
    double count = Math.max(1, Math.floor(bench.top().length().mm() / lengthways));
    double atEnds = (bench.top().length().mm() - (count - 1) * lengthways) / 2;
    double slender = layer.thickness().mm() / hold.diameter().mm();
    return layer.grain() == Grain.ALONG
        ? List.of(new Seat(name, atEnds, pitch / 2, lengthways, sideways, 0, slender))
        : List.of(new Seat(name, pitch / 2, atEnds, sideways, lengthways, 0, slender));
  }
}
