package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;
import org.stoutwork.wood.time.DurationClass;

/** Completes what is fixed to the bench or stays on it: vises and weights. */
final class ExtrasCompletion {

  private static final double HEAVIEST_KG = 1000;
  private static final double STRONGEST_CLAMP_N = 20_000;

  private final Answers answers;
  private final Top top;

  ExtrasCompletion(Answers answers, Top top) {
    this.answers = answers;
    this.top = top;
  }

  List<Vise> vises(List<ViseSketch> given) {
    List<Vise> out = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      out.add(vise("vises[%s]".formatted(i), given.get(i)));
    }
    return out;
  }

  private Vise vise(String key, ViseSketch v) {
    Edge edge = answers.or(key + ".edge", v.edge, Edge.FRONT, "front", "where none is named");
    double side = edge.isLong() ? top.length().mm() : top.width().mm();
    Length at =
        answers.length(
            key + ".at",
            v.at,
            () -> side * 0.2,
            new Range(0, side),
            "a fifth of the edge's length");
    Mass mass = mass(key + ".mass", v.mass, 14, "a usual iron vise with wooden cheeks");
    Length outreach =
        answers.length(
            key + ".outreach",
            v.outreach,
            () -> 180.0,
            new Range(0, 800),
            "a usual jaw, half open");
    Length jaw =
        answers.length(
            key + ".jawWidth",
            v.jawWidth,
            () -> Math.min(150, side),
            new Range(20, side),
            "a narrow jaw; a wider one presses less");
    Force clamp =
        answers.or(
            key + ".clampForce",
            v.clampForce,
            Force.ofNewtons(5000),
            "5 kN",
            "a steel screw turned by one hand");
    if (clamp.newtons() < 0 || clamp.newtons() > STRONGEST_CLAMP_N) {
      answers.fault(key + ".clampForce", clamp.toString(), "0 N to 20000 N is allowed");
    }
    String name = v.name.orElse(edge.words() + " vise");
    return new Vise(name, edge, at, mass, outreach, jaw, clamp);
  }

  List<Weight> weights(List<WeightSketch> given) {
    List<Weight> out = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      out.add(weight("weights[%s]".formatted(i), given.get(i)));
    }
    return out;
  }

  private Weight weight(String key, WeightSketch w) {
    WeightKind kind =
        answers.or(
            key + ".lies", w.kind, WeightKind.ON_TOP, WeightKind.ON_TOP.words(), "where not said");
    if (w.mass.isEmpty()) {
      answers.fault(key + ".mass", "missing", "a mass such as 20 kg must be given");
    }
    Mass mass = mass(key + ".mass", w.mass, 0, "");
    if (w.stays.isPresent() && (kind == WeightKind.MACHINE || kind == WeightKind.BALLAST)) {
      answers.fault(
          key + ".stays",
          "given for a " + kind.words(),
          "what is fixed stays for good; leave it out");
    }
    return switch (kind) {
      case MACHINE -> machine(key, w, mass);
      case ON_TOP -> new Weight.OnTop(w.name.orElse("stock on the top"), mass, stays(key, w));
      case ON_SHELF -> new Weight.OnShelf(w.name.orElse("gear on the shelf"), mass, stays(key, w));
      case BALLAST -> new Weight.Ballast(w.name.orElse("ballast"), mass);
    };
  }

  private DurationClass stays(String key, WeightSketch w) {
    return Lasting.of(answers, key + ".duration", w.stays, DurationClass.LONG);
  }

  private Weight machine(String key, WeightSketch w, Mass mass) {
    double length = top.length().mm();
    double width = top.width().mm();
    boolean reciprocating =
        answers.or(
            key + ".reciprocating",
            w.reciprocating,
            false,
            "no",
            "most machines turn and do not shake");
    w.ratesHz.stream()
        .filter(rate -> !(rate > 0 && rate < 1000))
        .forEach(
            rate ->
                answers.fault(
                    key + ".shaftRates", rate + " per second", "0 to 1000 turns per second"));
    return new Weight.Machine(
        w.name.orElse("machine"),
        mass,
        answers.length(
            key + ".x", w.x, () -> length / 2, new Range(0, length), "the middle of the top"),
        answers.length(
            key + ".y", w.y, () -> width / 2, new Range(0, width), "the middle of the top"),
        answers.length(
            key + ".centreAbove",
            w.centreAbove,
            () -> 250.0,
            new Range(0, 1500),
            "a usual bench-top machine"),
        answers.length(
            key + ".baseAlong", w.baseAlong, () -> 300.0, new Range(0, length), "a usual base"),
        answers.length(
            key + ".baseAcross", w.baseAcross, () -> 300.0, new Range(0, width), "a usual base"),
        reciprocating,
        w.ratesHz);
  }

  private Mass mass(String key, Optional<Mass> given, double usualKg, String reason) {
    if (given.isEmpty() && usualKg == 0) {
      return Mass.ofKg(0);
    }
    Mass mass = answers.or(key, given, Mass.ofKg(usualKg), Mass.ofKg(usualKg).toString(), reason);
    if (mass.kg() < 0 || mass.kg() > HEAVIEST_KG) {
      answers.fault(key, mass.toString(), "0 kg to 1000 kg is allowed");
      return Mass.ofKg(0);
    }
    return mass;
  }
}
