package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.People;
import org.stoutwork.bench.StatedAction;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.grade.GrowthDefects;
import org.stoutwork.wood.time.DurationClass;

/** Completes a whole description. One completion serves one sketch. */
final class Completion {

  private static final Range HEIGHT = new Range(300, 1400);
  private static final int MOST_PUPILS = 8;
  private static final double STRONGEST_ACTION_N = 50_000;

  private final BenchSketch sketch;
  private final Answers answers = new Answers();

  /** Height of a bench for handwork, mm. */
  static final double USUAL_HEIGHT = 850;

  private final WoodCatalogue catalogue;

  Completion(BenchSketch sketch, WoodCatalogue catalogue) {
    this.sketch = sketch;
    this.catalogue = catalogue;
  }

  Bench complete() throws UnsoundBench {
    String name = answers.or("bench", sketch.name, "bench", "bench", "it was given no name");
    Length height =
        answers.length(
            "height", sketch.height, () -> USUAL_HEIGHT, HEIGHT, "a usual height for handwork");
    WoodNames woods = new WoodNames(answers, catalogue, sketch.wood, growth(), sketch.gradedAs);
    Top top =
        new TopCompletion(answers, woods, sketch).complete(sketch.top.orElseGet(TopSketch::new));
    List<EndFrame> frames =
        new FrameCompletion(answers, woods, top, height.mm())
            .complete(sketch.everyEndFrame, sketch.endFrames);
    double underside = height.mm() - top.thicknessMm();
    List<Stretcher> stretchers =
        new StretcherCompletion(answers, woods, frames.get(0), underside, frames.size() - 1)
            .complete(sketch.stretchers);
    new Soundness(answers, top, height.mm()).check(frames, stretchers);
    Air air = new AirCompletion(answers).complete(sketch.air);
    FixingSketch fixing = sketch.top.flatMap(t -> t.fixing).orElseGet(FixingSketch::new);
    boolean held = stretchers.stream().anyMatch(s -> !(s.hold() instanceof LayerHold.Loose));
    top = new HoleCompletion(answers, fixing, top, frames, held).complete(air, woods.timbers());
    ExtrasCompletion extras = new ExtrasCompletion(answers, top);
    List<Vise> vises = extras.vises(sketch.vises);
    List<Weight> weights = extras.weights(sketch.weights);
    Duty duty =
        answers.or("duty", sketch.duty, Duty.GENERAL_JOINERY, "general joinery", "the common case");
    int pupils = pupils();
    Footing footing =
        answers.or(
            "footing",
            sketch.footing,
            Footing.UNKNOWN,
            Footing.UNKNOWN.words(),
            "the careful case");
    GlueKind glue =
        answers.or(
            "glue", sketch.glue, GlueKind.PVA_D3, GlueKind.PVA_D3.words(), "the usual bench glue");
    BasisChoice basis = basis(woods);
    List<StatedAction> actions = actions();
    if (!answers.faults().isEmpty()) {
      throw new UnsoundBench(answers.faults());
    }
    return new Bench(
        name,
        height,
        top,
        frames,
        stretchers,
        vises,
        weights,
        duty,
        pupils,
        footing,
        air,
        glue,
        basis,
        actions,
        woods.timbers(),
        people(),
        answers.defaults(frames.size()));
  }

  private Growth growth() {
    GrowthDefects defects =
        answers.or(
            "growth",
            sketch.growth,
            GrowthDefects.FEW_SMALL_KNOTS,
            "a few small knots",
            "hardly a board is free of them");
    if (sketch.grainRun.isEmpty()) {
      return Growth.straight(defects);
    }
    double run = sketch.grainRun.get();
    if (!(run >= Growth.STEEPEST_RUN && run <= 1000)) {
      answers.fault(
          "grainRun",
          Double.toString(run),
          "6 to 1000 is allowed: grain that moves by 1 in fewer than 6 is too steep for a bench");
      return Growth.straight(defects);
    }
    return new Growth(defects, OptionalDouble.of(run));
  }

  private int pupils() {
    int pupils = sketch.pupils.orElse(0);
    if (pupils < 0 || pupils > MOST_PUPILS) {
      answers.fault("pupils", Integer.toString(pupils), "0 to 8 is allowed");
    }
    return pupils;
  }

  /** Graded timber is judged by partial factors, other wood by the means of clear wood. */
  private BasisChoice basis(WoodNames woods) {
    BasisChoice usual = woods.anyGraded() ? BasisChoice.PARTIAL_FACTORS : BasisChoice.CLEAR_WOOD;
    BasisChoice basis =
        answers.or(
            "basis",
            sketch.basis,
            usual,
            usual.words(),
            woods.anyGraded() ? "the timber is graded" : "the wood has no strength class");
    if (basis == BasisChoice.PARTIAL_FACTORS && !woods.ungraded().isEmpty()) {
      answers.fault(
          "basis",
          "partial factors, but no strength class is named for " + woods.ungraded(),
          "say what the wood was graded as, such as gradedAs: D40, or choose the basis"
              + " \"clear-wood allowable\"");
    }
    if (basis == BasisChoice.CLEAR_WOOD && !woods.classed().isEmpty()) {
      answers.fault(
          "basis",
          "clear-wood allowable, but known by strength class only is " + woods.classed(),
          "name the species without gradedAs, or choose the basis \"partial factors\"");
    }
    return basis;
  }

  private List<StatedAction> actions() {
    List<StatedAction> out = new ArrayList<>();
    for (int i = 0; i < sketch.actions.size(); i++) {
      action("actions[%s]".formatted(i), sketch.actions.get(i)).ifPresent(out::add);
    }
    return out;
  }

  private Optional<StatedAction> action(String key, ActionSketch a) {
    if (a.kind.isEmpty()) {
      answers.fault(
          key + ".kind",
          "missing",
          Arrays.stream(ActionKind.values())
              .map(ActionKind::words)
              .collect(Collectors.joining(", ", "name the kind of action: ", "")));
    }
    if (a.force.isEmpty()) {
      answers.fault(key + ".force", "missing", "a force such as 1.2 kN must be given");
    }
    if (a.kind.isEmpty() || a.force.isEmpty()) {
      return Optional.empty();
    }
    Force force = a.force.get();
    if (!(force.newtons() > 0 && force.newtons() <= STRONGEST_ACTION_N)) {
      answers.fault(key + ".force", force.toString(), "more than 0 N and at most 50 kN is allowed");
      return Optional.empty();
    }
    ActionKind kind = a.kind.get();
    DurationClass usual =
        kind == ActionKind.SPREAD_ON_TOP ? DurationClass.MEDIUM : DurationClass.SHORT;
    if (a.acts.isPresent() && a.duration.isPresent()) {
      answers.fault(key + ".acts", "given beside a duration", "give one of them");
    }
    DurationClass duration =
        a.acts.isPresent()
            ? Lasting.of(answers, key + ".duration", a.acts, usual)
            : answers.or(
                key + ".duration", a.duration, usual, usual.words(), "usual for this kind");
    return Optional.of(new StatedAction(kind, a.name.orElse(kind.words()), force, duration));
  }

  private People people() {
    PeopleSketch p = sketch.people.orElseGet(PeopleSketch::new);
    return new People(
        p.prepared.orElse(""),
        p.checked.orElse(""),
        p.project.orElse(""),
        p.revision.orElse("A"),
        p.date.orElse(""));
  }
}
