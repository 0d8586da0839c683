package org.stoutwork.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Weight;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LooseBench;
import org.stoutwork.check.TopModels;
import org.stoutwork.check.caution.Cautions;
import org.stoutwork.check.joint.BoltsThroughJoints;
import org.stoutwork.check.joint.GlueClimate;
import org.stoutwork.check.joint.GlueLines;
import org.stoutwork.check.joint.JointStrengthCheck;
import org.stoutwork.check.joint.LayerScrews;
import org.stoutwork.check.joint.LippingNails;
import org.stoutwork.check.joint.RailBearing;
import org.stoutwork.check.joint.StretcherHolds;
import org.stoutwork.check.joint.TopGlueLines;
import org.stoutwork.check.joint.TopScrews;
import org.stoutwork.check.joint.ViseEdges;
import org.stoutwork.check.member.DogClamps;
import org.stoutwork.check.member.MemberStrength;
import org.stoutwork.check.member.SplitTop;
import org.stoutwork.check.movement.EdgeMovement;
import org.stoutwork.check.movement.TopMovement;
import org.stoutwork.check.service.Flatness;
import org.stoutwork.check.service.Sway;
import org.stoutwork.check.service.TopSag;
import org.stoutwork.check.stability.Standing;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Topic;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.DesignTables;

/**
 * Checks benches. Loading reads the tables of woods once; keep the instance and use it from as many
 * threads as you like.
 *
 * <pre>{@code
 * BenchCheck check = BenchCheck.load();
 * BenchResult result =
 *     check.run(
 *         BenchSketch.named("my bench")
 *             .wood("beech, European")
 *             .top(top -> top.length(Length.ofMm(2100)).width(Length.ofMm(650))));
 * double worst = result.worst().utilisation();
 * }</pre>
 */
public final class BenchCheck {

  private final WoodCatalogue woods;
  private final DesignTables tables;
  private final TopModels top;

  private BenchCheck(WoodCatalogue woods, DesignTables tables, TopModels top) {
    this.woods = woods;
    this.tables = tables;
    this.top = top;
  }

  /** Reads the tables of woods. */
  public static BenchCheck load() {
    return new BenchCheck(WoodCatalogue.load(), DesignTables.load(), TopModels.PLATE_AND_GRILLAGE);
  }

  /** The same with another catalogue, such as one with woods of the user's own. */
  public BenchCheck with(WoodCatalogue catalogue) {
    return new BenchCheck(catalogue, tables, top);
  }

  /**
   * The same without the plate: the top is judged by a grillage of strips alone. Faster, for
   * studies of many benches.
   */
  public BenchCheck withoutPlate() {
    return new BenchCheck(woods, tables, TopModels.GRILLAGE);
  }

  /** The woods that a bench may name. */
  public WoodCatalogue woods() {
    return woods;
  }

  /**
   * Completes a sketch and checks the bench.
   *
   * @throws UnsoundBench with every fault, if it cannot be built
   * @throws LooseBench naming the part that is loose, if it cannot stand
   */
  public BenchResult run(BenchSketch sketch) throws UnsoundBench {
    return run(sketch.complete(woods));
  }

  /**
   * Checks a bench.
   *
   * @throws LooseBench naming the part that is loose, if it cannot stand
   */
  public BenchResult run(Bench bench) {
    return examine(bench).result();
  }

  /**
   * Checks a bench and keeps the models behind the checks.
   *
   * @throws LooseBench naming the part that is loose, if it cannot stand
   */
  public Examination examine(Bench bench) {
    Inquiry inquiry = new Inquiry(bench, tables, top);
    List<CheckResult> checks = new ArrayList<>();
    checks.addAll(TopSag.all(inquiry));
    checks.addAll(Flatness.all(inquiry));
    List<Racking> racking = new ArrayList<>();
    for (Sway.Found found : Sway.all(inquiry)) {
      checks.add(found.check());
      racking.add(found.racking());
    }
    List<CheckResult> members = new ArrayList<>();
    for (CheckResult member : MemberStrength.all(inquiry, racking)) {
      members.add(SplitTop.relieve(inquiry, member));
    }
    checks.addAll(members);
    checks.addAll(JointStrengthCheck.all(inquiry));
    checks.addAll(RailBearing.all(inquiry));
    checks.addAll(GlueLines.all(inquiry));
    checks.addAll(TopGlueLines.all(inquiry, members));
    checks.addAll(LayerScrews.all(inquiry));
    checks.addAll(StretcherHolds.all(inquiry));
    GlueClimate.check(inquiry).ifPresent(checks::add);
    checks.addAll(TopScrews.all(inquiry));
    checks.addAll(LippingNails.all(inquiry));
    checks.addAll(ViseEdges.all(inquiry));
    checks.addAll(DogClamps.all(inquiry));
    checks.addAll(Standing.all(inquiry));
    checks.add(TopMovement.check(inquiry));
    checks.addAll(EdgeMovement.all(inquiry));
    BoltsThroughJoints.check(inquiry).ifPresent(checks::add);
    checks.addAll(leftOut(inquiry));
    return new Examination(
        inquiry, result(inquiry, DistinctKeys.of(inquiry, inOrder(checks)), racking));
  }

  /** Questions that a maker may ask and that no check here answers. */
  private static List<CheckResult> leftOut(Inquiry inquiry) {
    List<CheckResult> out = new ArrayList<>();
    if (!inquiry.bench().vises().isEmpty()) {
      out.add(
          new CheckResult.NotChecked(
              "vise-fixings",
              "Vise jaws and their fixings",
              "vises",
              Topic.OTHER,
              "the screws that hold a vise, the wood around them, and what its bars or housing cut"
                  + " out of rails, legs or dog holes are not looked at; follow the maker of the vise"));
    }
    if (inquiry.bench().weights().stream().anyMatch(Weight.OnShelf.class::isInstance)) {
      out.add(
          new CheckResult.NotChecked(
              "shelf-sag",
              "Sag of the shelf",
              "shelf",
              Topic.OTHER,
              "only the strength of the pieces that carry it is checked, not how far they and the"
                  + " boards sag"));
    }
    if (inquiry.bench().weights().stream().anyMatch(Weight.Machine.class::isInstance)) {
      out.add(
          new CheckResult.NotChecked(
              "shaking",
              "Shaking by the machine",
              "frame",
              Topic.OTHER,
              "the rates at which its shafts turn are not held against the natural frequencies of"
                  + " the bench; feel the bench as the machine runs up, and stiffen it if it hums"));
    }
    out.add(
        new CheckResult.NotChecked(
            "blows",
            "Blows of mallet and hammer",
            "top",
            Topic.OTHER,
            "blows are not analysed; strike over a leg"));
    return out;
  }

  /** By topic, the worst first in each; what was not checked comes last. */
  private static List<CheckResult> inOrder(List<CheckResult> checks) {
    Comparator<CheckResult> byUse = Comparator.comparingDouble(BenchCheck::use).reversed();
    return checks.stream()
        .sorted(Comparator.comparing(CheckResult::topic).thenComparing(byUse))
        .toList();
  }

  private static double use(CheckResult check) {
    return check instanceof CheckResult.Checked checked ? checked.utilisation() : -1;
  }

  private BenchResult result(Inquiry inquiry, List<CheckResult> checks, List<Racking> racking) {
    Bench bench = inquiry.bench();
    Map<String, Double> masses = inquiry.masses();
    double kg = masses.values().stream().mapToDouble(Double::doubleValue).sum();
    double kDef = inquiry.strengths().kDef(bench.top().layers().get(0).wood());
    Portraits portraits = new Portraits(inquiry);
    Listing listing = new Listing(inquiry);
    return new BenchResult(
        bench,
        checks,
        racking,
        listing.actions(),
        inquiry.combinationWords(),
        masses,
        listing.materials(),
        listing.joints(),
        portraits.shapes(checks),
        portraits.diagrams(checks),
        Cautions.of(bench, checks, kg, kDef, GlueClimate.woodsThatGluePoorly(inquiry)),
        inquiry.selfCheck(),
        listing.advice());
  }
}
