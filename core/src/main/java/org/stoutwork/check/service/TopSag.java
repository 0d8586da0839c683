package org.stoutwork.check.service;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.action.Action;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.check.Finding;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Unit;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Sag of the top under a person anywhere and under stock, at once and after years.
 *
 * <p>At once: under the action alone, against span over the duty's ratio. After years: everything
 * that lies on the top and its own weight, with creep (EN 1995-1-1 2.2.3), against a limit 1.4
 * times as large, except for a machine, which needs its level kept.
 */
public final class TopSag {

  private static final String STAYS = "what stays on the bench";
  private static final String WITH_CREEP = "permanent + stored, each as it is, with creep";
  private static final double LONG_TERM_EASE = 1.4;
  private static final double PSI_2_STORED = 0.8;
  private static final double PSI_2_USE = 0.3;
  private static final Source ANALYSIS =
      Source.derived("analysis of the frame, joints at mean stiffness");

  private static final Formula LIMIT =
      Formula.define("w_{lim}")
          .meaning("sag that the duty allows; for an overhang the span is twice its length")
          .unit(Unit.MM)
          .where("L", "span", Unit.MM)
          .where("n", "span over sag", Unit.ONE)
          .as("L/n")
          .source(Source.projectDefault("ratios of span to sag by duty"));

  private static final Formula FINAL =
      Formula.define("w_{fin}")
          .meaning("sag after years")
          .unit(Unit.MM)
          .where("w_G", "sag under the weight of bench, vises and machines", Unit.MM)
          .where("w_S", "sag under what is stored", Unit.MM)
          .where("w_Q", "sag under the action", Unit.MM)
          .where("k_{def}", "creep factor", Unit.ONE)
          .where("ψ_S", "lasting part of what is stored", Unit.ONE)
          .where("ψ_2", "lasting part of the action", Unit.ONE)
          .as("w_G*(1 + k_{def}) + w_S*(1 + ψ_S*k_{def}) + w_Q*(1 + ψ_2*k_{def})")
          .source(Source.fromMemory("EN 1995-1-1", "2.2.3"));

  private final Inquiry inquiry;
  private final SagLine lines;

  private TopSag(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.lines = SagLine.of(inquiry.bench(), inquiry.at(JointLevel.MEAN).model().grid());
  }

  /** All checks of sag. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return new TopSag(inquiry).all();
  }

  private List<CheckResult> all() {
    List<CheckResult> out = new ArrayList<>();
    for (Action.PointOnTop a : inquiry.plan().of(Action.PointOnTop.class)) {
      List<Stand> stands = inquiry.places().everywhere(a);
      out.add(atOnce("top-sag-point", "Sag of the top under a point load", stands));
      out.add(afterYears("top-sag-point-long-term", "Sag under a point load, long-term", stands));
    }
    for (Action.SpreadOnTop a : inquiry.plan().of(Action.SpreadOnTop.class)) {
      List<Stand> stands = List.of(inquiry.places().spread(a));
      out.add(atOnce("top-sag-spread", "Sag of the top under a spread load", stands));
      out.add(afterYears("top-sag-spread-long-term", "Sag under a spread load, long-term", stands));
    }
    out.add(level());
    return out;
  }

  /** Final sag under what stays: own weight, vises, machines and what is stored. */
  private CheckResult level() {
    double ratio = inquiry.plan().criteria().levelRatio();
    double kDef = kDef();
    Stand none = new Stand(null, inquiry.at(JointLevel.MEAN).permanent(), 0, STAYS);
    SagOf sag = (level, stand, spot) -> lasting(level, stand, spot, kDef, Pad.blank());
    Spot worst = worst(List.of(none), sag, ratio);
    RecordingPad pad = Pad.recording();
    double w = lasting(inquiry.at(JointLevel.MEAN), none, worst, kDef, pad);
    double limit = pad.take(LIMIT, span(worst), ratio);
    return inquiry.keep(
        finding("top-level", "Level of the top, long-term", worst, sag, limit, WITH_CREEP)
            .judge(w, limit, Unit.MM, pad),
        behind(worst, w, creeping(none, kDef)));
  }

  /** The sag of one crossing in one of the two directions. */
  private record Spot(Stand stand, int line, int station, boolean along, double use) {}

  /** How sag at a crossing is made up of load cases. */
  private interface SagOf {
    double at(LevelAnalysis level, Stand stand, Spot spot);
  }

  private CheckResult atOnce(String key, String title, List<Stand> stands) {
    double ratio = inquiry.plan().criteria().spanRatio();
    SagOf sag = (level, stand, spot) -> stand.force() * unit(level, stand, spot);
    Spot worst = worst(stands, sag, ratio);
    RecordingPad pad = Pad.recording();
    double w = sag.at(inquiry.at(JointLevel.MEAN), worst.stand(), worst);
    pad.given("w", "sag below the line of its supports", w, Unit.MM, ANALYSIS);
    double limit = pad.take(LIMIT, span(worst), ratio);
    new TopByHand(inquiry).compare(worst.stand().action(), pad);
    Combination alone =
        Combination.named("the action alone").plus(worst.stand().force(), worst.stand().unit());
    return inquiry.keep(
        finding(key, title, worst, sag, limit, alone.name()).judge(w, limit, Unit.MM, pad),
        behind(worst, w, alone));
  }

  private CheckResult afterYears(String key, String title, List<Stand> stands) {
    double ratio = inquiry.plan().criteria().spanRatio() / LONG_TERM_EASE;
    double kDef = kDef();
    SagOf sag = (level, stand, spot) -> lasting(level, stand, spot, kDef, Pad.blank());
    Spot worst = worst(stands, sag, ratio);
    RecordingPad pad = Pad.recording();
    double w = lasting(inquiry.at(JointLevel.MEAN), worst.stand(), worst, kDef, pad);
    double limit = pad.take(LIMIT, span(worst), ratio);
    return inquiry.keep(
        finding(key, title, worst, sag, limit, Factors.use().words() + ", with creep")
            .judge(w, limit, Unit.MM, pad),
        behind(worst, w, creeping(worst.stand(), kDef)));
  }

  private GoverningCase behind(Spot spot, double w, Combination loads) {
    return GoverningCase.movement(
        loads,
        "sag below the line of its supports",
        w,
        lines.terms(spot.along(), spot.line(), spot.station()));
  }

  /** Everything with the factors that creep adds to it. */
  private Combination creeping(Stand stand, double kDef) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    Combination out =
        Combination.named("each as it is, with creep").plus(1 + kDef, mean.permanent());
    if (mean.loads().storesAnything()) {
      out = out.plus(1 + PSI_2_STORED * kDef, mean.stored());
    }
    return stand.force() == 0
        ? out
        : out.plus(stand.force() * (1 + PSI_2_USE * kDef), stand.unit());
  }

  private double kDef() {
    return inquiry.bench().top().layers().stream()
        .mapToDouble(layer -> inquiry.strengths().kDef(layer.wood()))
        .max()
        .orElseThrow();
  }

  private double lasting(LevelAnalysis level, Stand stand, Spot spot, double kDef, Pad pad) {
    double own = sag(SagLine.of(level.alone(level.permanent())), spot);
    double stored =
        level.loads().storesAnything() ? sag(SagLine.of(level.alone(level.stored())), spot) : 0;
    double use = stand.force() * unit(level, stand, spot);
    return pad.take(FINAL, own, stored, use, kDef, PSI_2_STORED, PSI_2_USE);
  }

  private double unit(LevelAnalysis level, Stand stand, Spot spot) {
    return sag(SagLine.of(level.alone(stand.unit())), spot);
  }

  private double sag(SagLine.Heights heights, Spot spot) {
    return spot.along()
        ? lines.along(heights, spot.line(), spot.station())
        : lines.across(heights, spot.line(), spot.station());
  }

  private double span(Spot spot) {
    return spot.along() ? lines.spanAlong(spot.station()) : lines.spanAcross(spot.line());
  }

  /** The crossing, direction and stand with the greatest use of its limit. */
  private Spot worst(List<Stand> stands, SagOf sag, double ratio) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    int stations = lines.grid().stations().size();
    int crossings = lines.grid().lines().size() * stations;
    Spot worst = null;
    for (int i = 0; i < crossings; i++) {
      Stand stand = stands.size() == 1 ? stands.get(0) : stands.get(i);
      for (boolean along : new boolean[] {true, false}) {
        Spot spot = new Spot(stand, i / stations, i % stations, along, 0);
        worst = worse(worst, mean, stand, spot, sag, ratio);
      }
    }
    return worst;
  }

  private Spot worse(
      Spot worst, LevelAnalysis mean, Stand stand, Spot spot, SagOf sag, double ratio) {
    boolean supported =
        spot.along() ? lines.onSupportAlong(spot.station()) : lines.onSupportAcross(spot.line());
    if (supported && worst != null) {
      return worst;
    }
    double use = supported ? 0 : sag.at(mean, stand, spot) * ratio / span(spot);
    Spot tried = new Spot(stand, spot.line(), spot.station(), spot.along(), use);
    return worst == null || use > worst.use() ? tried : worst;
  }

  private Finding finding(
      String key, String title, Spot spot, SagOf sag, double limit, String combination) {
    StiffnessRange range = inquiry.range(level -> sag.at(level, spot.stand(), spot) / limit);
    String place =
        inquiry.at(JointLevel.MEAN).loads().placeWords(spot.line(), spot.station())
            + (spot.along() ? ", along the bench" : ", across the bench");
    return Finding.of(key, title, Topic.TOP)
        .on("top", place)
        .under(spot.stand().words(), combination)
        .over(range);
  }
}
