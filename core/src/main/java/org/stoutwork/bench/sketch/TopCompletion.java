package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.quantity.Length;

/** Completes the top but for the holes of its screws, see {@link HoleCompletion}. */
final class TopCompletion {

  private static final Range LENGTH = new Range(400, 6000);
  private static final Range WIDTH = new Range(150, 2000);
  private static final Range THICKNESS = new Range(6, 250);

  private final Answers answers;
  private final WoodNames woods;
  private final BenchSketch sketch;

  TopCompletion(Answers answers, WoodNames woods, BenchSketch sketch) {
    this.answers = answers;
    this.woods = woods;
    this.sketch = sketch;
  }

  Top complete(TopSketch t) {
    Length length =
        answers.length("top.length", t.length, () -> 1800.0, LENGTH, "a usual length of bench");
    Length width =
        answers.length("top.width", t.width, () -> 600.0, WIDTH, "a usual width of bench");
    List<TopLayer> layers = t.layers.isEmpty() ? List.of(single(t)) : layers(t);
    LayerHold hold = new LayerHold.Glued();
    if (layers.size() > 1) {
      hold = answers.or("top.hold", t.hold, hold, "glued", "where not said");
    }
    if (hold instanceof LayerHold.Screwed && layers.size() > 2) {
      answers.fault(
          "top.hold",
          "screwed with %s layers".formatted(layers.size()),
          "screwed tops are covered up to two layers; glue them or say loose");
    }
    TopEdges edges = new TopEdges(answers, width.mm());
    return new Top(
        length,
        width,
        layers,
        hold,
        fixing(t, layers),
        t.endCap.map(edges::endCap),
        t.lipping.map(edges::lipping),
        new DogHolesCompletion(answers, length.mm(), width.mm()).all(t.dogHoles));
  }

  private TopLayer single(TopSketch t) {
    Length thickness =
        answers.length(
            "top.thickness", t.thickness, () -> 70.0, THICKNESS, "a usual thickness of solid top");
    return new TopLayer(woods.of("top.wood", t.wood), thickness, t.grain.orElse(Grain.ALONG));
  }

  private List<TopLayer> layers(TopSketch t) {
    t.thickness.ifPresent(
        given ->
            answers.fault(
                "top.thickness",
                given.toString(),
                "a top of layers is as thick as they are; leave the thickness out"));
    List<TopLayer> out = new ArrayList<>();
    for (int i = 0; i < t.layers.size(); i++) {
      LayerSketch layer = t.layers.get(i);
      String key = "top.layers[%s]".formatted(i);
      Length thickness =
          answers.length(
              key + ".thickness", layer.thickness, () -> 18.0, THICKNESS, "a usual sheet");
      Grain grain = answers.or(key + ".grain", layer.grain, Grain.ALONG, "along", "where not said");
      out.add(new TopLayer(woods.of(key + ".wood", layer.wood), thickness, grain));
    }
    return out;
  }

  private TopFixing fixing(TopSketch t, List<TopLayer> layers) {
    FixingSketch f = t.fixing.orElseGet(FixingSketch::new);
    double whole = layers.stream().mapToDouble(layer -> layer.thickness().mm()).sum();
    double usualScrew = TopScrewSize.of(sketch, whole);
    Length screw =
        answers.length(
            "top.fixing.screwDiameter",
            f.screwDiameter,
            () -> usualScrew,
            new Range(3, 16),
            TopScrewSize.reason(usualScrew));
    FixingScrew usual =
        screw.mm() < TopScrewSize.THINNEST_COACH_SCREW
            ? FixingScrew.WOOD_SCREW
            : FixingScrew.COACH_SCREW;
    FixingScrew kind =
        answers.or("top.fixing.screw", f.screw, usual, usual.words(), "usual for its thickness");
    boolean coach = kind == FixingScrew.COACH_SCREW;
    int diameters = TopScrewSize.threadDiameters(coach);
    double tip = screw.mm() * TopScrewSize.tipDiameters(coach);
    Length thread =
        answers.length(
            "top.fixing.threadLength",
            f.threadLength,
            () -> Math.min(diameters * screw.mm(), TopScrewSize.OF_TOP * whole - tip),
            new Range(10, 200),
            "%s diameters of thread in the top, which with the tip takes at most 0.85 of it"
                .formatted(coach ? "six" : "seven"));
    int perRail = answers.or("top.fixing.perRail", f.perRail, 3, "3", "front, middle and back");
    if (perRail < 1 || perRail > 20) {
      answers.fault("top.fixing.perRail", Integer.toString(perRail), "1 to 20 is allowed");
      perRail = 3;
    }
    if (thread.mm() + tip >= whole) {
      answers.fault(
          "top.fixing.threadLength",
          thread.toString(),
          "less than %s, or the screws come through the top with their tips"
              .formatted(Length.ofMm(whole - tip)));
    }
    Length pilot =
        answers.length(
            "top.fixing.pilotDiameter",
            f.pilotDiameter,
            () -> kind == FixingScrew.COACH_SCREW ? screw.mm() * 2 / 3 : 0.55 * screw.mm(),
            new Range(0, screw.mm()),
            kind == FixingScrew.COACH_SCREW ? "two thirds of the screw" : "most of its core");
    Length washer =
        answers.length(
            "top.fixing.washerDiameter",
            f.washerDiameter,
            () -> (kind == FixingScrew.COACH_SCREW ? 3 : 2) * screw.mm(),
            new Range(1.2 * screw.mm(), 120),
            kind == FixingScrew.COACH_SCREW ? "three diameters" : "a usual head");
    return new TopFixing(
        screw, thread, ScrewHole.round(screw.mm()), TopHeld.NOWHERE, kind, pilot, washer, perRail);
  }
}
