package org.stoutwork.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.action.Action;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.assembly.Part;
import org.stoutwork.bench.Timber;
import org.stoutwork.bench.Weight;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.advice.Effect;
import org.stoutwork.joint.advice.Note;
import org.stoutwork.joint.advice.Review;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.quantity.Measure;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.ActionLine;
import org.stoutwork.result.AdviceLine;
import org.stoutwork.result.JointLine;
import org.stoutwork.result.MaterialLine;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.source.Source;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.DesignValues;
import org.stoutwork.wood.design.Found;
import org.stoutwork.wood.time.DurationClass;

/** Lists what went into the checks: actions, woods, joints. */
final class Listing {

  private static final List<DesignQuantity> SHOWN =
      List.of(
          DesignQuantity.MODULUS_MEAN,
          DesignQuantity.SHEAR_MODULUS_MEAN,
          DesignQuantity.DENSITY_MEAN,
          DesignQuantity.BENDING,
          DesignQuantity.TENSION_PARALLEL,
          DesignQuantity.COMPRESSION_PARALLEL,
          DesignQuantity.COMPRESSION_PERPENDICULAR,
          DesignQuantity.SHEAR);

  private final Inquiry inquiry;

  Listing(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  List<ActionLine> actions() {
    List<ActionLine> out = new ArrayList<>();
    double kg = inquiry.masses().values().stream().mapToDouble(Double::doubleValue).sum();
    out.add(
        new ActionLine(
            "own weight with what is fixed to it",
            new Measure(kg, Unit.KG),
            "down, where each part is",
            DurationClass.PERMANENT.words(),
            Source.derived("volumes and mean densities")));
    for (Weight weight : inquiry.bench().weights()) {
      if (!weight.fixed()) {
        out.add(
            new ActionLine(
                weight.name(),
                new Measure(weight.mass().kg(), Unit.KG),
                weight instanceof Weight.OnTop ? "down, over the whole top" : "down, on the shelf",
                weight.lasts().words(),
                Source.yours("weights in your description")));
      }
    }
    inquiry.plan().actions().forEach(action -> out.add(line(action)));
    return out;
  }

  private static ActionLine line(Action action) {
    return new ActionLine(
        action.name(),
        new Measure(action.force(), Unit.N),
        place(action),
        action.duration().words(),
        action.source());
  }

  private static String place(Action action) {
    if (action instanceof Action.Thrust thrust) {
      return thrust.way().words() + ", both senses, at the height of the top";
    }
    if (action instanceof Action.Sitting sitting) {
      String outside =
          sitting.outreach() > 0
              ? ", %s mm outside it".formatted(Writing.fixed(sitting.outreach(), 0))
              : "";
      String push =
          sitting.push() > 0
              ? ", and %s N sideways".formatted(Writing.fixed(sitting.push(), 0))
              : "";
      return "down, on the %s edge%s%s".formatted(sitting.edge().words(), outside, push);
    }
    return action instanceof Action.SpreadOnTop
        ? "down, over the whole top"
        : "down, anywhere on the top";
  }

  List<MaterialLine> materials() {
    Map<String, Set<String>> uses = new LinkedHashMap<>();
    for (Part part : inquiry.at(JointLevel.MEAN).model().parts()) {
      uses.computeIfAbsent(part.wood(), w -> new LinkedHashSet<>())
          .add(several(part.kind().words()));
    }
    List<MaterialLine> out = new ArrayList<>();
    inquiry
        .bench()
        .timbers()
        .forEach(
            (key, timber) ->
                out.add(
                    new MaterialLine(
                        key,
                        name(timber),
                        String.join(", ", uses.getOrDefault(key, Set.of("layers"))),
                        values(key))));
    return out;
  }

  private static String several(String part) {
    return switch (part) {
      case "top" -> part;
      case "foot" -> "feet";
      default -> part + "s";
    };
  }

  private static String name(Timber timber) {
    return timber.wood().name()
        + timber.gradedAs().map(g -> ", graded as " + g.key()).orElse("")
        + (timber.hasOwnValues() ? ", with values of yours" : "");
  }

  private List<MaterialLine.Value> values(String wood) {
    List<MaterialLine.Value> out = new ArrayList<>();
    DesignValues values = inquiry.strengths().of(wood, DurationClass.SHORT);
    for (DesignQuantity what : SHOWN) {
      DesignValues.Explained explained = values.explain(what);
      if (explained.found() instanceof Found.Known known) {
        Source weakest =
            explained.working().sources().stream()
                .reduce((a, b) -> a.mark().weaker(b.mark()) == a.mark() ? a : b)
                .orElse(Source.derived("tables"));
        out.add(
            new MaterialLine.Value(
                what.symbol(),
                what.meaning(),
                new Measure(known.number(), what.unit()),
                weakest,
                explained.working()));
      }
    }
    return out;
  }

  /** What makers do, for joints that are alike once. */
  List<AdviceLine> advice() {
    Map<String, AdviceLine> out = new LinkedHashMap<>();
    for (JointSpot spot : inquiry.at(JointLevel.MEAN).model().joints()) {
      Joint joint = spot.joint().joint();
      for (Note note : Review.of(joint, spot.setting())) {
        Optional<Effect> effect = Effect.of(note, joint, spot.setting());
        String alike = spot.kind() + JointWords.sizes(joint) + note.advice().part() + note.value();
        out.putIfAbsent(
            alike,
            new AdviceLine(
                spot.name(),
                note.advice().part(),
                note.advice().words(),
                new Measure(note.value(), note.advice().unit()),
                note.advice().of(),
                note.followed(),
                effect.map(Effect::what).orElse(""),
                effect.map(Effect::ratio),
                note.advice().source()));
      }
    }
    return List.copyOf(out.values());
  }

  /** Joints that are alike, once. */
  List<JointLine> joints() {
    Map<String, JointLine> out = new LinkedHashMap<>();
    for (JointSpot spot : inquiry.at(JointLevel.MEAN).model().joints()) {
      JointStiffness k = spot.stiffness();
      JointLine line =
          new JointLine(
              spot.name(),
              spot.joint().joint().title(),
              JointWords.sizes(spot.joint().joint()),
              new StiffnessRange(
                  k.low().rotInPlane(), k.mean().rotInPlane(), k.high().rotInPlane()),
              k.reason());
      String alike = spot.kind() + line.kind() + line.sizes() + line.stiffness();
      out.putIfAbsent(alike, line);
    }
    return List.copyOf(out.values());
  }
}
