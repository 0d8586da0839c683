package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.MissingValues;
import org.stoutwork.check.UsePart;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Work pressed along the bench between two dogs: the wall of the hole on which a dog leans, the
 * wood beyond the outermost hole, and the strip of the top between them, squeezed and bowed up.
 */
public final class DogClamps {

  /** Half of what a dog usually stands above the top, mm: there the work presses on it. */
  private static final double ABOVE = 15;

  private static final Source STATICS = Source.derived("statics");

  private static final Formula WALL =
      Formula.define("σ_c")
          .meaning("greatest pressure on the wall of the hole, at its mouth")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("d", "width of a dog", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .as("γ*F/(d*t)*(4 + 6*a/t)")
          .source(Source.derived("statics of a stiff dog, pressure straight over its depth"));

  private static final Formula TEAR =
      Formula.define("τ")
          .meaning("shear beside the wood beyond the outermost hole")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("e", "wood beyond the hole, to the end of the top", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .as("γ*F/(e*t)")
          .source(
              Source.derived(
                  "statics of two planes, stress twice its mean at the hole and falling to the end"));

  private static final Formula STRIP =
      Formula.define("b")
          .meaning("width of top that takes it, less the hole")
          .unit(Unit.MM)
          .where("y", "row from the nearer edge of the top", Unit.MM)
          .where("d", "width of a hole", Unit.MM)
          .as("2*y - d")
          .source(Source.projectDefault("no more than lies evenly about the row"));

  private static final Formula SQUEEZE =
      Formula.define("σ_c")
          .meaning("compression along the bench between the dogs")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("b", "width that takes it", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .as("γ*F/(b*t)")
          .source(STATICS);

  private static final Formula BEND =
      Formula.define("σ_m")
          .meaning("bending up between the dogs, for the work presses above the middle of the top")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("b", "width that takes it", Unit.MM)
          .as("6*γ*F*(t/2 + a)/(b*t^2)")
          .source(STATICS);

  private static final Formula SUM =
      Formula.define("u_1")
          .meaning("utilisation by both stresses together")
          .where("σ_c", "compression along the bench", Unit.MPA)
          .where("f_c", "compression strength", Unit.MPA)
          .where("σ_m", "bending up", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("σ_c/f_c + σ_m/f_m")
          .source(Source.derived("stresses in one direction add up"));

  private static final Formula BOW =
      Formula.define("w")
          .meaning("by how much the whole top bows up between the outermost holes")
          .unit(Unit.MM)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("a", "height above the top at which the work presses", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("L", "between the outermost holes, at most the longest bay", Unit.MM)
          .where("E", "mean modulus along the bench", Unit.MPA)
          .where("B", "width of the top", Unit.MM)
          .as("12*F*(t/2 + a)*L^2/(8*E*B*t^3)")
          .source(Source.derived("beam under an even moment"));

  private final Inquiry inquiry;
  private final Top top;
  private final Factors factors;

  private DogClamps(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.top = inquiry.bench().top();
    this.factors = Factors.strength(inquiry.bench().basis());
  }

  /** Three checks for each row of holes. */
  public static List<CheckResult> all(Inquiry inquiry) {
    DogClamps clamps = new DogClamps(inquiry);
    List<CheckResult> out = new ArrayList<>();
    List<DogHoles> rows = clamps.top.dogHoles();
    for (int i = 0; i < rows.size(); i++) {
      String number = rows.size() == 1 ? "" : "-" + (i + 1);
      String part = rows.size() == 1 ? "dog holes" : "dog holes, row " + (i + 1);
      out.add(clamps.wall(rows.get(i), "dog-hole-wall" + number, part));
      out.add(clamps.tear(rows.get(i), "dog-hole-end" + number, part));
      out.add(clamps.between(rows.get(i), "dog-hole-strip" + number, part));
    }
    return out;
  }

  private CheckResult wall(DogHoles row, String key, String part) {
    String title = "Wall of a dog hole under its dog";
    Soft soft = soft(DesignQuantity.COMPRESSION_PARALLEL, DesignQuantity.COMPRESSION_PERPENDICULAR);
    if (!soft.missing().isEmpty()) {
      return new CheckResult.NotChecked(key, title, part, Topic.JOINT, soft.missing());
    }
    RecordingPad pad = Pad.recording();
    double strength = strength(soft, pad);
    double above = above(pad);
    double pressure =
        pad.take(
            WALL,
            factors.leading(),
            row.clampForce().newtons(),
            row.size().mm(),
            top.thicknessMm(),
            above);
    return finding(key, title, part, "the mouth of a hole, " + soft.wood())
        .note(blocked(row))
        .judge(pressure, strength, Unit.MPA, pad);
  }

  /** Says how many holes stand over legs or top rails, where no dog goes through. */
  private String blocked(DogHoles row) {
    int count = 0;
    for (int i = 0; i < row.count(); i++) {
      double x = row.atMm(i);
      if (inquiry.bench().endFrames().stream().anyMatch(frame -> over(row, x, frame))) {
        count++;
      }
    }
    return count == 0
        ? ""
        : "%s of %s holes stand over a leg or a top rail: a dog goes no deeper there than the top."
            .formatted(count, row.count());
  }

  private boolean over(DogHoles row, double x, EndFrame frame) {
    double half = row.size().mm() / 2;
    double y = row.fromFront().mm();
    double beside = Math.abs(x - frame.at().mm()) - half;
    double front = Layout.frontLegY(frame);
    double back = Layout.backLegY(inquiry.bench(), frame);
    double leg = frame.leg().across().mm() / 2 + half;
    boolean overLeg =
        beside < frame.leg().along().mm() / 2
            && (Math.abs(y - front) < leg || Math.abs(y - back) < leg);
    boolean overRail =
        beside < frame.topRail().thickness().mm() / 2 && y + half > front && y - half < back;
    return overLeg || overRail;
  }

  private CheckResult tear(DogHoles row, String key, String part) {
    String title = "Wood beyond the outermost dog hole";
    Soft soft = soft(DesignQuantity.SHEAR, DesignQuantity.ROLLING_SHEAR);
    if (!soft.missing().isEmpty()) {
      return new CheckResult.NotChecked(key, title, part, Topic.JOINT, soft.missing());
    }
    RecordingPad pad = Pad.recording();
    double strength = strength(soft, pad);
    double half = row.size().mm() / 2;
    double beyond = Math.min(row.fromLeft().mm(), top.length().mm() - row.lastMm()) - half;
    double shear =
        pad.take(TEAR, factors.leading(), row.clampForce().newtons(), beyond, top.thicknessMm());
    Finding finding = finding(key, title, part, "end of the top, " + soft.wood());
    if (beyond < 4 * row.size().mm()) {
      finding.note("Usual is wood of four hole widths beyond the last hole; there is less here.");
    }
    return finding.judge(shear, strength, Unit.MPA, pad);
  }

  private CheckResult between(DogHoles row, String key, String part) {
    String title = "Top between dogs, squeezed and bowed";
    Soft soft = soft(DesignQuantity.COMPRESSION_PARALLEL, DesignQuantity.COMPRESSION_PERPENDICULAR);
    Soft bent = soft(DesignQuantity.BENDING, DesignQuantity.BENDING_ACROSS);
    String missing = soft.missing().isEmpty() ? bent.missing() : soft.missing();
    if (!missing.isEmpty()) {
      return new CheckResult.NotChecked(key, title, part, Topic.JOINT, missing);
    }
    RecordingPad pad = Pad.recording();
    double fc = explain(soft, pad);
    double fm = explain(bent, pad);
    double t = top.thicknessMm();
    double force = row.clampForce().newtons();
    double edge = Math.min(row.fromFront().mm(), top.width().mm() - row.fromFront().mm());
    double above = above(pad);
    bow(row, above, pad);
    double b = pad.take(STRIP, edge, row.size().mm());
    double squeezed = pad.take(SQUEEZE, factors.leading(), force, b, t);
    double bowed = pad.take(BEND, factors.leading(), force, above, t, b);
    double use = pad.take(SUM, squeezed, fc, bowed, fm);
    return finding(key, title, part, "the strip about the row, " + bent.wood())
        .judgeSum(use, inquiry.plan().criteria().strengthUse(), pad);
  }

  /** For the maker's eye alone: nothing limits it. Tops of several layers are left out. */
  private void bow(DogHoles row, double above, Pad pad) {
    if (top.layers().size() > 1 || row.count() < 2) {
      return;
    }
    TopLayer layer = top.layers().get(0);
    FrameTimber timber = inquiry.timbers().get(layer.wood());
    pad.take(
        BOW,
        row.clampForce().newtons(),
        above,
        top.thicknessMm(),
        Math.min(row.lastMm() - row.fromLeft().mm(), Layout.longestBay(inquiry.bench())),
        layer.grain() == Grain.ALONG ? timber.e() : timber.eAcross(),
        top.width().mm());
  }

  private Finding finding(String key, String title, String part, String place) {
    return Finding.of(key, title, Topic.JOINT)
        .on(part, place)
        .under("work pressed between dogs", factors.words());
  }

  private static double above(Pad pad) {
    return pad.given(
        "a",
        "height above the top at which the work presses",
        ABOVE,
        Unit.MM,
        Source.projectDefault("work 30 mm thick; thinner presses lower"));
  }

  /** The layer of the top that is weakest along the bench; or what is missing. */
  private record Soft(String wood, DesignQuantity what, String missing) {}

  private Soft soft(DesignQuantity along, DesignQuantity across) {
    Soft weakest = null;
    double least = Double.POSITIVE_INFINITY;
    for (TopLayer layer : top.layers()) {
      DesignQuantity what = layer.grain() == Grain.ALONG ? along : across;
      String missing = MissingValues.of(inquiry, layer.wood(), List.of(what));
      if (!missing.isEmpty()) {
        return new Soft(layer.wood(), what, missing);
      }
      double value =
          inquiry.strengths().value(layer.wood(), DurationClass.SHORT, what).orElseThrow();
      if (value < least) {
        least = value;
        weakest = new Soft(layer.wood(), what, "");
      }
    }
    return weakest;
  }

  private double explain(Soft soft, Pad pad) {
    return inquiry
        .strengths()
        .explain(soft.wood(), DurationClass.SHORT, soft.what(), pad)
        .orElseThrow();
  }

  private double strength(Soft soft, Pad pad) {
    return UsePart.of(explain(soft, pad), inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
  }
}
