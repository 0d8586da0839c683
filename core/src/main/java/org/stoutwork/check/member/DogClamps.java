package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.FrameTimber;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.DogHoles;
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
            DogFormulas.WALL,
            factors.leading(),
            row.clampForce().newtons(),
            row.size().mm(),
            top.thicknessMm(),
            above);
    return finding(key, title, part, "the mouth of a hole, " + inquiry.nameOf(soft.wood()))
        .note(new HolesOver(inquiry.bench()).words(row))
        .judge(pressure, strength, Unit.MPA, pad);
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
            DogFormulas.TEAR,
            factors.leading(),
            row.clampForce().newtons(),
            Math.min(end, between),
            top.thicknessMm(),
            whole);
    String place = end < between ? "end of the top, " : "between two holes, ";
    Finding finding = finding(key, title, part, place + inquiry.nameOf(soft.wood()));
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
    double strip = pad.take(DogFormulas.STRIP, edge, pierced(row, edge));
    double b = Math.max(strip, LEAST);
    double tension = pad.take(DogFormulas.PULLED, factors.leading(), force, b, t);
    double bowed =
        pad.take(DogFormulas.BEND, factors.leading(), force, above, t, b, bent.layered());
    double use = pad.take(DogFormulas.SUM, tension, ft, bowed, fm);
    return finding(key, title, part, "the strip about the row, " + inquiry.nameOf(bent.wood()))
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
        DogFormulas.BOW,
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

  private double explain(Soft soft, Pad pad) {
    return inquiry.strengths().explain(soft.wood(), CLAMPED, soft.what(), pad).orElseThrow();
  }

  private double strength(Soft soft, Pad pad) {
    return UsePart.of(explain(soft, pad), inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
  }
}
