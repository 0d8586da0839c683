package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Factors;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.bench.Vise;
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
 * Edges of the top as the jaws of vises press on them. Screws and brackets of a vise are not looked
 * at.
 */
public final class ViseEdges {

  private static final Formula PRESSURE =
      Formula.define("σ_c")
          .meaning("pressure of the jaw on the edge of the top")
          .unit(Unit.MPA)
          .where("γ", "factor of the pressing force", Unit.ONE)
          .where("F", "what the vise is meant to press", Unit.N)
          .where("w", "width of the jaw on the edge", Unit.MM)
          .where("t", "thickness of the top", Unit.MM)
          .as("γ*F/(w*t)")
          .source(Source.derived("statics: the jaw covers the whole edge"));

  private ViseEdges() {}

  /** One check for each vise. */
  public static List<CheckResult> all(Inquiry inquiry) {
    List<CheckResult> out = new ArrayList<>();
    for (Vise vise : inquiry.bench().vises()) {
      out.add(check(inquiry, vise));
    }
    return out;
  }

  private static CheckResult check(Inquiry inquiry, Vise vise) {
    String key = "vise-edge-" + JointStrengthCheck.key(vise.name());
    String title = "Edge of the top under the jaw";
    TopLayer soft = null;
    double least = Double.POSITIVE_INFINITY;
    for (TopLayer layer : inquiry.bench().top().layers()) {
      DesignQuantity what = strength(vise, layer);
      String missing = MissingValues.of(inquiry, layer.wood(), List.of(what));
      if (!missing.isEmpty()) {
        return new CheckResult.NotChecked(key, title, vise.name(), Topic.JOINT, missing);
      }
      double value =
          inquiry.strengths().value(layer.wood(), DurationClass.MEDIUM, what).orElseThrow();
      if (value < least) {
        least = value;
        soft = layer;
      }
    }
    return pressed(inquiry, vise, soft, Finding.of(key, title, Topic.JOINT));
  }

  private static CheckResult pressed(Inquiry inquiry, Vise vise, TopLayer soft, Finding finding) {
    Factors factors = Factors.strength(inquiry.bench().basis());
    RecordingPad pad = Pad.recording();
    double whole =
        inquiry
            .strengths()
            .explain(soft.wood(), DurationClass.MEDIUM, strength(vise, soft), pad)
            .orElseThrow();
    double strength = UsePart.of(whole, inquiry.plan().criteria().strengthUse(), Unit.MPA, pad);
    double pressure =
        pad.take(
            PRESSURE,
            factors.leading(),
            vise.clampForce().newtons(),
            covered(inquiry.bench().top(), vise),
            inquiry.bench().top().thicknessMm());
    return finding
        .on(vise.name(), vise.edge().words() + " edge of the top, " + inquiry.nameOf(soft.wood()))
        .under("the vise screwed tight", factors.words())
        .judge(pressure, strength, Unit.MPA, pad);
  }

  /** How much of the jaw lies on the edge, mm; above 0, for its middle does. */
  private static double covered(Top top, Vise vise) {
    double edge = vise.edge().isLong() ? top.length().mm() : top.width().mm();
    double half = vise.jawWidth().mm() / 2;
    double at = vise.at().mm();
    return Math.max(0, Math.min(edge, at + half) - Math.max(0, at - half));
  }

  /** Long edges are pressed across the bench, ends along it. */
  private static DesignQuantity strength(Vise vise, TopLayer layer) {
    boolean alongGrain = vise.edge().isLong() == (layer.grain() == Grain.ACROSS);
    return alongGrain
        ? DesignQuantity.COMPRESSION_PARALLEL
        : DesignQuantity.COMPRESSION_PERPENDICULAR;
  }
}
