package org.stoutwork.check.member;

import java.util.Optional;
import org.stoutwork.action.Action;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.assembly.TopLoads;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.bench.Weight;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.UsePart;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Utilisation;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * A solid top that splits along the grain under a point load is not broken: the strip under the
 * load still carries it along the grain, without its neighbours. Where bending across the grain
 * exceeds what wood is trusted with in that direction, this strip alone is checked and stands for
 * the top.
 */
public final class SplitTop {

  /** No strip is narrower than the patch on which a person stands, mm. */
  private static final double LOADED_WIDTH = 100;

  private static final Formula POINT =
      Formula.define("F")
          .meaning("force on the strip, taken in one place")
          .unit(Unit.N)
          .where("F_1", "point load with its factor", Unit.N)
          .where("W_m", "what machines press on the strip, with its factor", Unit.N)
          .as("F_1 + W_m")
          .source(Source.derived("statics"));

  private static final Formula MOMENT =
      Formula.define("M")
          .meaning("moment in the strip, a simple beam over the longest bay or a bracket beyond it")
          .unit(Unit.N_MM)
          .where("F", "force on the strip", Unit.N)
          .where("L", "longest bay", Unit.MM)
          .where("a", "longest overhang, to the middle of the load", Unit.MM)
          .where("q", "weight of the strip and of what lies on it, with factors", Unit.N_PER_MM)
          .as("max(F*L/4 + q*L^2/8, F*a + q*a^2/2)")
          .source(Source.derived("statics of a simple beam"));

  private static final Formula STRESS =
      Formula.define("σ_m")
          .meaning("bending stress along the grain in the strip alone")
          .unit(Unit.MPA)
          .where("M", "moment in the strip", Unit.N_MM)
          .where("b", "width of the narrowest strip, less its dog holes", Unit.MM)
          .where("h", "thickness of the top", Unit.MM)
          .as("6*M/(b*h^2)")
          .source(Source.derived("beam theory"));

  private final Inquiry inquiry;
  private final Bench bench;

  private SplitTop(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.bench = inquiry.bench();
  }

  /** The check of the top across the grain, or that of the split top in its place. */
  public static CheckResult relieve(Inquiry inquiry, CheckResult check) {
    boolean concerned =
        check.key().equals("bending-top-across")
            && check instanceof CheckResult.Checked checked
            && checked.utilisation() > 1;
    if (!concerned) {
      return check;
    }
    return new SplitTop(inquiry).instead((CheckResult.Checked) check).orElse(check);
  }

  private Optional<CheckResult> instead(CheckResult.Checked across) {
    TopLayer layer = bench.top().layers().get(0);
    Optional<Action.PointOnTop> load = inquiry.plan().first(Action.PointOnTop.class);
    if (bench.top().layers().size() > 1 || layer.grain() != Grain.ALONG || load.isEmpty()) {
      return Optional.empty();
    }
    RecordingPad pad = Pad.recording();
    pad.remark(
        "Across the grain the top would be used %s times by what codes trust wood with in that"
                .formatted(Utilisation.shown(across.utilisation()))
            + " direction, so splits along the grain are taken as there. Checked here is the strip"
            + " under the load alone, along the grain.");
    double stress = stress(layer, load.get(), pad);
    double whole =
        inquiry
            .strengths()
            .explain(layer.wood(), load.get().duration(), DesignQuantity.BENDING, pad)
            .orElseThrow();
    double strength = UsePart.of(whole, inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
    if (stress / strength >= across.utilisation()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
                "bending-top-split",
                "Bending of the top, were it split along the grain",
                Topic.MEMBER)
            .on("top", "the strip under the load")
            .under(load.get().name(), Factors.strength(bench.basis()).words())
            .note(
                "Codes trust wood across the grain with very little, for checks and shakes may be"
                    + " there already. A sound slab seldom splits; one that did would still carry"
                    + " this load.")
            .judge(stress, strength, Unit.MPA, pad));
  }

  private double stress(TopLayer layer, Action.PointOnTop load, Pad pad) {
    Factors factors = Factors.strength(bench.basis());
    double b = narrowestStrip();
    double h = layer.thickness().mm();
    double density = inquiry.timbers().get(layer.wood()).density();
    double q =
        factors.permanent() * density * 1e-9 * b * h * TopLoads.GRAVITY
            + factors.stored() * stored() * b;
    double force =
        pad.take(POINT, factors.leading() * load.force(), factors.permanent() * machines(b));
    double moment = pad.take(MOMENT, force, longestBay(), overhang(), q);
    return pad.take(STRESS, moment, b - widestHole(b), h);
  }

  /** What machines press on a strip that runs under their middle, N. */
  private double machines(double b) {
    double sum = 0;
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine m) {
        double share = Math.min(1, b / Math.max(b, m.baseAcross().mm()));
        sum += m.mass().kg() * TopLoads.GRAVITY * share;
      }
    }
    return sum;
  }

  /** What lies on the whole top, N/mm². */
  private double stored() {
    double kg = 0;
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.OnTop on) {
        kg += on.mass().kg();
      }
    }
    return kg * TopLoads.GRAVITY / (bench.top().length().mm() * bench.top().width().mm());
  }

  private double narrowestStrip() {
    TopGrid grid = inquiry.at(JointLevel.MEAN).model().grid();
    double narrowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < grid.lines().size(); i++) {
      narrowest = Math.min(narrowest, grid.share(i));
    }
    return Math.max(narrowest, LOADED_WIDTH);
  }

  /** Dog holes of one row stand in a strip; of one narrower than they a tenth is left, mm. */
  private double widestHole(double b) {
    double widest =
        bench.top().dogHoles().stream().mapToDouble(row -> row.size().mm()).max().orElse(0);
    return Math.min(widest, 0.9 * b);
  }

  private double longestBay() {
    double longest = 0;
    for (int i = 1; i < bench.endFrames().size(); i++) {
      EndFrame before = bench.endFrames().get(i - 1);
      longest = Math.max(longest, bench.endFrames().get(i).at().mm() - before.at().mm());
    }
    return longest;
  }

  private double overhang() {
    double left = bench.endFrames().get(0).at().mm();
    double right =
        bench.top().length().mm() - bench.endFrames().get(bench.endFrames().size() - 1).at().mm();
    return Math.max(0, Math.max(left, right) - LOADED_WIDTH / 2);
  }
}
