package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.BasisChoice;
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
 * wood behind a hole, and the strip of the top between them, which the dogs pull and bow up.
 */
public final class DogClamps {

  /** Half of what a dog usually stands above the top, mm: there the work presses on it. */
  private static final double ABOVE = 15;

  /** Clamps are left on overnight. */
  private static final DurationClass CLAMPED = DurationClass.MEDIUM;

  /** Something is left of every piece, mm, so that a stress can be worked out. */
  private static final double LEAST = 0.1;

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
          .meaning("shear beside the wood behind the hole")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what presses the work between dogs", Unit.N)
          .where("e", "wood behind the hole, to the next or to the end of the boards", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .where("k_{cr}", "part of the thickness without checks", Unit.ONE)
          .as("γ*F/(e*t*k_{cr})")
          .source(
              Source.derived(
                  "statics of two planes, stress twice its mean at the hole and falling to the end"));

  private static final Formula STRIP =
      Formula.define("b")
          .meaning("width of top that takes it, less the hole")
          .unit(Unit.MM)
          .where("y", "row from the nearer edge of the top", Unit.MM)
          .where("d", "width of all holes side by side in it", Unit.MM)
          .as("2*y - d")
          .source(Source.projectDefault("no more than lies evenly about the row"));

  private static final Formula PULLED =
      Formula.define("σ_t")
          .meaning("tension along the bench between the dogs, which the work pushes apart")
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
          .where("k", "stress in the layer over that of a solid top", Unit.ONE)
          .as("6*k*γ*F*(t/2 + a)/(b*t^2)")
          .source(STATICS);

  private static final Formula SUM =
      Formula.define("u_1")
          .meaning("utilisation by both stresses together")
          .where("σ_t", "tension along the bench", Unit.MPA)
          .where("f_t", "tension strength", Unit.MPA)
          .where("σ_m", "bending up", Unit.MPA)
          .where("f_m", "bending strength", Unit.MPA)
          .as("σ_t/f_t + σ_m/f_m")
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
      return new CheckResult.NotChecked(key, title, part, Topic.MEMBER, soft.missing());
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
    return finding(key, title, part, "the mouth of a hole, " + name(soft.wood()))
        .note(blocked(row))
        .judge(pressure, strength, Unit.MPA, pad);
  }

  /** Says how many holes stand over legs, top rails or stretchers, where no dog goes through. */
  private String blocked(DogHoles row) {
    int count = 0;
    for (int i = 0; i < row.count(); i++) {
      double x = row.atMm(i);
      if (overStretcher(row, x)
          || inquiry.bench().endFrames().stream().anyMatch(frame -> over(row, x, frame))) {
        count++;
      }
    }
    return count == 0
        ? ""
        : "%s of %s holes stand over a leg, a top rail or a stretcher: a dog goes no deeper there than the top."
            .formatted(count, row.count());
  }

  private boolean overStretcher(DogHoles row, double x) {
    List<EndFrame> frames = inquiry.bench().endFrames();
    boolean within = x > frames.get(0).at().mm() && x < frames.get(frames.size() - 1).at().mm();
    return within
        && inquiry.bench().stretchers().stream()
            .filter(s -> Layout.touchesTop(inquiry.bench(), s))
            .anyMatch(
                s ->
                    Math.abs(
                            Layout.stretcherY(inquiry.bench(), frames.get(0), s.line())
                                - row.fromFront().mm())
                        < (s.thickness().mm() + row.size().mm()) / 2);
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
    String title = "Wood behind a dog hole";
    Soft soft = soft(DesignQuantity.SHEAR, DesignQuantity.ROLLING_SHEAR);
    if (!soft.missing().isEmpty()) {
      return new CheckResult.NotChecked(key, title, part, Topic.MEMBER, soft.missing());
    }
    RecordingPad pad = Pad.recording();
    double strength = strength(soft, pad);
    double end = beyond(row);
    double between =
        row.count() > 1 ? row.spacing().mm() - row.size().mm() : Double.POSITIVE_INFINITY;
    double whole =
        inquiry.bench().basis() == BasisChoice.PARTIAL_FACTORS
            ? inquiry.strengths().crackFactor(soft.wood())
            : 1;
    double shear =
        pad.take(
            TEAR,
            factors.leading(),
            row.clampForce().newtons(),
            Math.min(end, between),
            top.thicknessMm(),
            whole);
    String place = end < between ? "end of the top, " : "between two holes, ";
    Finding finding = finding(key, title, part, place + name(soft.wood()));
    String note = "";
    if (end < 4 * row.size().mm()) {
      note = "Usual is wood of four hole widths beyond the last hole; there is less here. ";
    }
    if (between < 2 * row.size().mm()) {
      note += "Usual is wood of two hole widths between holes; there is less here.";
    }
    return finding.note(note.strip()).judge(shear, strength, Unit.MPA, pad);
  }

  /** Wood of the boards beyond the outermost holes, the smaller of both ends, mm; above 0. */
  private double beyond(DogHoles row) {
    double cap = top.endCap().map(c -> c.width().mm()).orElse(0.0);
    double left = row.fromLeft().mm();
    double right = top.length().mm() - row.lastMm();
    return Math.max(LEAST, Math.min(left, right) - cap - row.size().mm() / 2);
  }

  private CheckResult between(DogHoles row, String key, String part) {
    String title = "Top between dogs, pulled and bowed";
    Soft pulled = soft(DesignQuantity.TENSION_PARALLEL, DesignQuantity.TENSION_PERPENDICULAR);
    Soft bent = bent();
    String missing = pulled.missing().isEmpty() ? bent.missing() : pulled.missing();
    if (!missing.isEmpty()) {
      return new CheckResult.NotChecked(key, title, part, Topic.MEMBER, missing);
    }
    RecordingPad pad = Pad.recording();
    double ft = explain(pulled, pad);
    double fm = explain(bent, pad);
    double t = top.thicknessMm();
    double force = row.clampForce().newtons();
    double edge = Math.min(row.fromFront().mm(), top.width().mm() - row.fromFront().mm());
    double above = above(pad);
    bow(row, above, pad);
    double strip = pad.take(STRIP, edge, pierced(row, edge));
    double b = Math.max(strip, LEAST);
    double tension = pad.take(PULLED, factors.leading(), force, b, t);
    double bowed = pad.take(BEND, factors.leading(), force, above, t, b, bent.layered());
    double use = pad.take(SUM, tension, ft, bowed, fm);
    return finding(key, title, part, "the strip about the row, " + name(bent.wood()))
        .judgeSum(use, inquiry.plan().criteria().strengthUse(), pad);
  }

  /** Width of the holes of all rows within a strip about one of them, mm. */
  private double pierced(DogHoles row, double edge) {
    double middle = row.fromFront().mm();
    return top.dogHoles().stream()
        .mapToDouble(other -> other.across(middle - edge, middle + edge))
        .sum();
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
    return Finding.of(key, title, Topic.MEMBER)
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

  /**
   * The layer of the top that is used most along the bench; or what is missing.
   *
   * @param layered its bending stress over that of a solid top
   */
  private record Soft(String wood, DesignQuantity what, double layered, String missing) {}

  private Soft soft(DesignQuantity along, DesignQuantity across) {
    return weakest(
        top.layers().stream().map(layer -> new LayerStress(layer, 1)).toList(), along, across);
  }

  private Soft bent() {
    return weakest(
        LayerStress.of(inquiry, Grain.ALONG),
        DesignQuantity.BENDING,
        DesignQuantity.BENDING_ACROSS);
  }

  private Soft weakest(List<LayerStress> layers, DesignQuantity along, DesignQuantity across) {
    Soft weakest = null;
    double most = -1;
    for (LayerStress stress : layers) {
      TopLayer layer = stress.layer();
      DesignQuantity what = layer.grain() == Grain.ALONG ? along : across;
      String missing = MissingValues.of(inquiry, layer.wood(), List.of(what));
      if (!missing.isEmpty()) {
        return new Soft(layer.wood(), what, 1, missing);
      }
      double value = inquiry.strengths().value(layer.wood(), CLAMPED, what).orElseThrow();
      if (stress.factor() / value > most) {
        most = stress.factor() / value;
        weakest = new Soft(layer.wood(), what, stress.factor(), "");
      }
    }
    return weakest;
  }

  private String name(String wood) {
    return inquiry.bench().timbers().get(wood).wood().names().get(0);
  }

  private double explain(Soft soft, Pad pad) {
    return inquiry.strengths().explain(soft.wood(), CLAMPED, soft.what(), pad).orElseThrow();
  }

  private double strength(Soft soft, Pad pad) {
    return UsePart.of(explain(soft, pad), inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
  }
}
