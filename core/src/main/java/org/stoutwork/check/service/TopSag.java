package org.stoutwork.check.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stoutwork.action.Action;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.Weight;
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
  private static final double PSI_2_STORED = 0.8;
  private static final double PSI_2_USE = 0.3;

  /** Spots that come so near to the worst of the grillage are tried on the plate too. */
  static final double NEARLY_WORST = 0.9;

  private static final Formula LIMIT =
      Formula.define("w_{lim}")
          .meaning("sag that the duty allows; for an overhang the span is twice its length")
          .unit(Unit.MM)
          .where("L", "span", Unit.MM)
          .where("n", "span over sag", Unit.ONE)
          .as("L/n")
          .source(Source.projectDefault("ratios of span to sag by duty"));

  private final Inquiry inquiry;
  private final SagLine lines;
  private final StripSag strips;
  private final Optional<PlateSag> plate;

  private TopSag(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.lines = SagLine.of(inquiry.bench(), inquiry.at(JointLevel.MEAN).model().grid());
    this.strips = new StripSag(inquiry, lines);
    this.plate = inquiry.plate().map(p -> new PlateSag(p, lines));
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

  /** How the sag of a spot at one level is made up of the answers of a model. */
  private interface SagOf {
    double by(SagModel model, JointLevel level, SagSpot spot);
  }

  private CheckResult atOnce(String key, String title, List<Stand> stands) {
    double ratio = inquiry.plan().criteria().spanRatio();
    SagOf sag = SagModel::atOnce;
    SagSpot worst = worst(stands, sag, ratio);
    RecordingPad pad = Pad.recording();
    double w = sag.by(judge(), JointLevel.MEAN, worst);
    pad.given("w", "sag below the line of its supports", w, Unit.MM, source());
    double limit = pad.take(LIMIT, lines.span(worst), ratio);
    compare(worst, w, sag, pad);
    new TopByHand(inquiry).compare(worst.stand().action(), pad);
    Combination alone =
        Combination.named("the action alone").plus(worst.stand().force(), worst.stand().unit());
    return inquiry.keep(
        finding(key, title, worst, sag, limit, alone.name()).judge(w, limit, Unit.MM, pad),
        behind(worst, sag, alone));
  }

  private CheckResult afterYears(String key, String title, List<Stand> stands) {
    double ratio = inquiry.plan().criteria().lastingRatio();
    return lasting(key, title, stands, ratio, Factors.use().words() + ", with creep");
  }

  /** Final sag under what stays: own weight, vises, machines and what is stored. */
  private CheckResult level() {
    double ratio = inquiry.plan().criteria().levelRatio();
    Stand none = new Stand(null, inquiry.at(JointLevel.MEAN).permanent(), 0, STAYS);
    String title = "Level of the top, long-term";
    return lasting("top-level", title, List.of(none), ratio, WITH_CREEP);
  }

  private CheckResult lasting(
      String key, String title, List<Stand> stands, double ratio, String combination) {
    double kDef = kDef();
    SagOf sag = (model, level, spot) -> lasting(model.parts(level, spot), kDef, Pad.blank());
    SagSpot worst = worst(stands, sag, ratio);
    RecordingPad pad = Pad.recording();
    double w = lasting(judge().parts(JointLevel.MEAN, worst), kDef, pad);
    double limit = pad.take(LIMIT, lines.span(worst), ratio);
    compare(worst, w, sag, pad);
    return inquiry.keep(
        finding(key, title, worst, sag, limit, combination).judge(w, limit, Unit.MM, pad),
        behind(worst, sag, creeping(worst.stand(), kDef)));
  }

  /** The frame whose movements a reader can find again: that of the strips. */
  private GoverningCase behind(SagSpot spot, SagOf sag, Combination loads) {
    return GoverningCase.movement(
        loads,
        "sag below the line of its supports, the top as strips",
        sag.by(strips, JointLevel.MEAN, spot),
        lines.terms(spot.along(), spot.line(), spot.station()));
  }

  /** Everything with the factors that creep adds to it. */
  private Combination creeping(Stand stand, double kDef) {
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    Combination out =
        Combination.named("each as it is, with creep").plus(1 + kDef, mean.permanent());
    if (mean.loads().storesAnything()) {
      out = out.plus(1 + lastingOfStored() * kDef, mean.stored());
    }
    return stand.force() == 0
        ? out
        : out.plus(stand.force() * (1 + PSI_2_USE * kDef), stand.unit());
  }

  private double lasting(SagParts w, double kDef, Pad pad) {
    return pad.take(
        SagFormulas.FINAL, w.own(), w.stored(), w.action(), kDef, lastingOfStored(), PSI_2_USE);
  }

  /** The part of what is stored that creeps: all of it where it lies for good. */
  private double lastingOfStored() {
    return inquiry.bench().storesForGood() ? 1 : PSI_2_STORED;
  }

  private double kDef() {
    return inquiry.bench().top().layers().stream()
        .mapToDouble(layer -> inquiry.strengths().kDef(layer.wood()))
        .max()
        .orElseThrow();
  }

  /** The model that the top is judged by. */
  private SagModel judge() {
    return plate.isPresent() ? plate.get() : strips;
  }

  private Source source() {
    return plate.isPresent() ? BothModels.PLATE : BothModels.STRIPS;
  }

  private void compare(SagSpot spot, double w, SagOf sag, Pad pad) {
    if (plate.isPresent()) {
      double byStrips = sag.by(strips, JointLevel.MEAN, spot);
      double mesh = plate.get().meshDifference(JointLevel.MEAN, spot);
      BothModels.compare(isNarrow(spot.stand().action()), w, byStrips, mesh, pad);
    }
  }

  /** Whether most of a load stands on small places: a person, the feet of a machine. */
  private boolean isNarrow(Action action) {
    return action == null
        ? inquiry.bench().weights().stream().anyMatch(Weight.Machine.class::isInstance)
        : !(action instanceof Action.SpreadOnTop);
  }

  /** The crossing, direction and stand with the greatest use of its limit. */
  private SagSpot worst(List<Stand> stands, SagOf sag, double ratio) {
    List<SagSpot> tried = byStrips(stands, sag, ratio);
    if (plate.isEmpty()) {
      return tried.get(0);
    }
    double most = tried.get(0).use();
    double least = stands.size() == 1 ? 0 : NEARLY_WORST * most;
    return Greatest.of(
        tried.stream().filter(spot -> spot.use() >= Math.min(least, most)).toList(),
        spot -> sag.by(plate.get(), JointLevel.MEAN, spot) / lines.span(spot));
  }

  /** Every spot that can sag by the grillage, the greatest use of its limit first. */
  private List<SagSpot> byStrips(List<Stand> stands, SagOf sag, double ratio) {
    int stations = lines.grid().stations().size();
    int crossings = lines.grid().lines().size() * stations;
    List<SagSpot> out = new ArrayList<>();
    for (int i = 0; i < crossings; i++) {
      Stand stand = stands.size() == 1 ? stands.get(0) : stands.get(i);
      for (boolean along : new boolean[] {true, false}) {
        SagSpot spot = new SagSpot(stand, i / stations, i % stations, along, 0);
        if (!lines.onSupport(spot)) {
          double use = sag.by(strips, JointLevel.MEAN, spot) * ratio / lines.span(spot);
          out.add(new SagSpot(stand, spot.line(), spot.station(), along, use));
        }
      }
    }
    out.sort(Comparator.comparingDouble(SagSpot::use).reversed());
    return out;
  }

  private Finding finding(
      String key, String title, SagSpot spot, SagOf sag, double limit, String combination) {
    StiffnessRange range = inquiry.range(level -> sag.by(judge(), level.level(), spot) / limit);
    String place =
        inquiry.at(JointLevel.MEAN).loads().placeWords(spot.line(), spot.station())
            + (spot.along() ? ", along the bench" : ", across the bench");
    return Finding.of(key, title, Topic.TOP)
        .on("top", place)
        .under(spot.stand().words(), combination)
        .over(range);
  }
}
